declare module "fontkit" {
  export type Font = {
    readonly unitsPerEm: number;
    hasGlyphForCodePoint(point: number): boolean;
    layout(text: string, features?: readonly string[]): { readonly advanceWidth: number };
  };
  export function create(data: Uint8Array): Font;
}
