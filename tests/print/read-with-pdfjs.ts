import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** Reads a PDF with a reader that knows nothing of ours: pages, texts, the first page's size and the roles of its structure. */
export async function readWithPdfjs(pdf: Uint8Array) {
  const task = getDocument({
    data: Uint8Array.from(pdf),
    isEvalSupported: false,
    useSystemFonts: false,
    verbosity: 0,
  });
  const document = await task.promise;
  const texts: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const content = await (await document.getPage(number)).getTextContent();
    texts.push(...content.items.map((item) => ("str" in item ? item.str : "")));
  }
  const first = await document.getPage(1);
  const tree = JSON.stringify(await first.getStructTree());
  const [left = 0, bottom = 0, right = 0, top = 0] = first.view;
  const { numPages: pages } = document;
  const { info } = await document.getMetadata();
  await task.destroy();
  return {
    pages,
    text: texts.join(""),
    roles: new Set([...tree.matchAll(/"role":"(\w+)"/g)].map(([, role]) => role)),
    size: [right - left, top - bottom],
    info: info as Record<string, unknown>,
  };
}
