/** A file of these objects, numbered from 1, the first of them the catalogue, with its table. */
export function pdfOf(...objects: readonly string[]): string {
  let body = '%PDF-1.4\n';
  const offsets = objects.map((content, index) => {
    const offset = body.length;
    body += `${index + 1} 0 obj\n${content}\nendobj\n`;
    return offset;
  });
  const entries = offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n \n`).join('');
  const size = objects.length + 1;
  return `${body}xref\n0 ${size}\n0000000000 65535 f \n${entries}trailer\n<</Size ${size}\n/Root 1 0 R>>\nstartxref\n${body.length}\n%%EOF\n`;
}
