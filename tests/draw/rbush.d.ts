declare module "rbush" {
  export default class RBush<T extends { minX: number; minY: number; maxX: number; maxY: number }> {
    load(items: readonly T[]): this;
    search(box: { minX: number; minY: number; maxX: number; maxY: number }): T[];
  }
}
