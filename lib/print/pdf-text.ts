/** A text as a PDF writes it: in brackets where it is plain ASCII, else as UTF-16 in hexadecimal. */
export function pdfText(text: string): string {
  if (/^[\x20-\x7e]*$/.test(text)) return `(${text.replace(/[\\()]/g, "\\$&")})`;
  return `<FEFF${hexOf(text)}>`;
}

/** UTF-16 in hexadecimal. */
export function hexOf(text: string): string {
  let hex = "";
  for (let at = 0; at < text.length; at++)
    hex += text.charCodeAt(at).toString(16).toUpperCase().padStart(4, "0");
  return hex;
}
