/** A way of seeing, as a colour matrix on linear red, green and blue, row by row. */
export type Vision = {
  readonly id: "full" | "grey" | "protan" | "deutan" | "tritan";
  readonly name: string;
  readonly matrix: readonly [
    readonly [number, number, number],
    readonly [number, number, number],
    readonly [number, number, number],
  ];
};

const luminance = [0.2126, 0.7152, 0.0722] as const;

/** As printed, in grey, and as three kinds of colour blindness see it.
 * Source: G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, doi:10.1109/TVCG.2009.113, severity 1; grey by the luminance of sRGB. */
export const visions: readonly Vision[] = [
  {
    id: "full",
    name: "As printed",
    matrix: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
  },
  { id: "grey", name: "Grey copy", matrix: [luminance, luminance, luminance] },
  {
    id: "protan",
    name: "Without the red sense (protan)",
    matrix: [
      [0.152286, 1.052583, -0.204868],
      [0.114503, 0.786281, 0.099216],
      [-0.003882, -0.048116, 1.051998],
    ],
  },
  {
    id: "deutan",
    name: "Without the green sense (deutan)",
    matrix: [
      [0.367322, 0.860646, -0.227968],
      [0.280085, 0.672501, 0.047413],
      [-0.01182, 0.04294, 0.968881],
    ],
  },
  {
    id: "tritan",
    name: "Without the blue sense (tritan)",
    matrix: [
      [1.255528, -0.076749, -0.178779],
      [-0.078411, 0.930809, 0.147602],
      [0.004733, 0.691367, 0.3039],
    ],
  },
];
