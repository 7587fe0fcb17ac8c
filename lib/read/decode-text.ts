/** UTF-8 bytes as text with LF line ends and no byte order mark, or the place of the first byte that is no UTF-8. */
export function decodeText(
  bytes: Uint8Array,
):
  | { readonly text: string }
  | { readonly line: number; readonly column: number; readonly text: string } {
  try {
    return {
      text: new TextDecoder("utf-8", { fatal: true }).decode(bytes).replaceAll("\r\n", "\n"),
    };
  } catch {
    const text = new TextDecoder("utf-8").decode(bytes).replaceAll("\r\n", "\n");
    const before = text.slice(0, Math.max(0, text.indexOf("\uFFFD")));
    return {
      text,
      line: before.split("\n").length,
      column: before.length - before.lastIndexOf("\n"),
    };
  }
}
