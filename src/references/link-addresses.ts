/** Addresses in HTML text: `&#38;` belongs to one, closing punctuation does not. A DOI may stand without its address. */
const address = /(https?:\/\/|\bdoi:(?=10\.\d{4,}))((?:&#38;|[^\s<>"'&])+(?<![.,;:!?)\]’”]))/g;

/** Makes each `https://…` and `doi:10.…` in the text of `html` a link; other kinds of address stay text. */
export function linkAddresses(html: string): string {
  return html.replace(address, (written, scheme: string, rest: string) => {
    const url = scheme === 'doi:' ? `https://doi.org/${rest}` : written;
    return `<a href="${url}">${written}</a>`;
  });
}
