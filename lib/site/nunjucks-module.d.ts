declare module "nunjucks" {
  export class FileSystemLoader {
    constructor(folder: string | readonly string[]);
  }
  export type Options = {
    readonly autoescape?: boolean;
    readonly throwOnUndefined?: boolean;
    readonly trimBlocks?: boolean;
    readonly lstripBlocks?: boolean;
  };
  export type Loader = { getSource(name: string): { src: string; path: string; noCache: boolean } };
  export class Environment {
    constructor(loader: FileSystemLoader | Loader, options?: Options);
    render(name: string, view: object): string;
  }
  const nunjucks: { Environment: typeof Environment; FileSystemLoader: typeof FileSystemLoader };
  export default nunjucks;
}
