import type { Figure, Pictures, SectionParts, SectionView } from "../../model/figure.ts";
import { mm, wholeMm } from "../../model/measure.ts";
import { drawFigure, type Pen } from "../canvas.ts";
import { notAnatomy } from "../parts/bone.ts";
import { inMm } from "../parts/instrument-part.ts";
import { exampleLength, headPitch } from "../parts/screw-shape.ts";
import { type Bore, boneCut } from "../parts/section/bone-cut.ts";
import { plateCut } from "../parts/section/plate-cut.ts";
import { screwCut } from "../parts/section/screw-cut.ts";
import { sectionPlaces } from "../parts/section/section-places.ts";
import { type SectionScene, sectionScene } from "../parts/section/section-scene.ts";
import { lagHolesWords, lagSeatedWords, seatedWords } from "../parts/section/section-words.ts";
import { apartSizes, typeSizes } from "../tokens.ts";

/** Room for words over the picture and beside the head, in letters. */
const room: Readonly<Record<SectionView, { readonly above: number; readonly right: number }>> = {
  seated: { above: 2.1, right: 8 },
  "lag-holes": { above: 4.3, right: 3.7 },
  "lag-seated": { above: 2.1, right: 1.7 },
};

/** What stays free beside the words under the bone, mm. */
const aroundWords = 0.8;

function boresOf(view: SectionView, { places, parts }: SectionScene): readonly Bore[] {
  const { near, tip, split } = places;
  const pilot = { name: "pilot", width: inMm(parts.screw.pilot), from: tip - 1, to: near };
  if (view === "seated" || split === undefined) return [pilot];
  const wide = inMm(parts.screw.gliding ?? parts.screw.major);
  return [
    { ...pilot, to: split },
    { name: "gliding", width: wide, from: split, to: near },
  ];
}

function factsOf(
  view: SectionView,
  { parts, interfaces }: SectionScene,
): NonNullable<Figure["facts"]> {
  const { screw, zone, plateName, plateThickness } = parts;
  const { head } = screw;
  const holes: NonNullable<Figure["facts"]> =
    view === "seated"
      ? [["pilot hole", `${mm(screw.pilot)} mm`]]
      : [
          ["gliding hole, near side", `${mm(screw.gliding ?? screw.major)} mm`],
          ["pilot hole, far side", `${mm(screw.pilot)} mm`],
        ];
  return [
    ["plate", `${plateName}, ${mm(plateThickness)} mm thick`],
    ["hole", `${zone.name}, ${mm(zone.through)} mm at its narrowest`],
    ...("seat" in zone ? [["seat", `${zone.seat_form}, ${mm(zone.seat)} mm`] as const] : []),
    ["head", `${head.form}, ${mm(head.diameter)} mm wide, ${mm(head.height)} mm high`],
    ...(head.form === "threaded"
      ? [
          [
            "head thread",
            `pitch ${mm(Math.round(headPitch(screw, interfaces) * 1000))} mm`,
          ] as const,
        ]
      : []),
    ["thread", `${mm(screw.major)} mm, core ${mm(screw.core)} mm, pitch ${mm(screw.pitch)} mm`],
    ...holes,
    ["length", `${wholeMm(exampleLength(screw))} mm, an example length from the rack`],
  ];
}

const titles: Readonly<Record<SectionView, (parts: SectionParts) => string>> = {
  seated: ({ screw, zone, depth }) =>
    `${screw.called} seated in ${zone.name}${depth === "near-cortex" ? ", near side only" : ""}`,
  "lag-holes": ({ screw, zone }) =>
    `The two holes for ${screw.called.replace(/^S/, "s")} as lag screw through ${zone.name}`,
  "lag-seated": ({ screw, zone }) => `${screw.called} as lag screw through ${zone.name}`,
};

const says: Readonly<Record<SectionView, (parts: SectionParts) => string>> = {
  seated: ({ zone }) =>
    zone.kind === "threaded"
      ? "The thread of the plate holds the head."
      : "The head draws the plate down onto the bone.",
  "lag-holes": () =>
    "The near hole is as wide as the thread, the far hole as wide as the pilot drill.",
  "lag-seated": () => "The thread grips the far piece only and draws it to the near one.",
};

const words: Readonly<Record<SectionView, (pen: Pen, scene: SectionScene) => void>> = {
  seated: seatedWords,
  "lag-holes": lagHolesWords,
  "lag-seated": lagSeatedWords,
};

/** "Not anatomy" in clear paper beneath the bone: over the line that measures the length, or under the names of its pieces. */
function boneWords(pen: Pen, { places, x, letter, bottom }: SectionScene, view: SectionView): void {
  const from = x(Math.max(places.far ?? places.tip, places.tip)) + aroundWords;
  const size = Math.max(apartSizes.least, Math.min(typeSizes.small, letter * 0.9));
  const under = view === "lag-holes" ? letter * 1.5 : 0;
  notAnatomy(pen, [from, bottom + under + 0.98 * size], x(places.near) - from, size);
}

/** A cut through plate, hole, screw and bone drawn from their numbers at one scale, measures beside them; bone is a sign, the length an example from the rack. */
export const section: Pictures["section"] = (id, view, parts, interfaces, size) => {
  const places = sectionPlaces(view, parts);
  const scene = sectionScene(places, parts, interfaces, size, room[view]);
  const facts = factsOf(view, scene);
  const about = {
    title: titles[view](parts),
    description: `Cut through the middle. ${says[view](parts)} ${facts.map(([what, value]) => `${what}: ${value}`).join("; ")}. Bone is not anatomy.`,
    width: size.width,
    height: size.height,
  };
  const figure = drawFigure(id, about, (pen) =>
    pen.group("section", { data: { view, scale: scene.scale } }, (group) => {
      boneCut(group, scene, boresOf(view, scene));
      plateCut(group, scene);
      if (view !== "lag-holes") screwCut(group, scene);
      words[view](group, scene);
      boneWords(group, scene, view);
    }),
  );
  return { ...figure, facts };
};
