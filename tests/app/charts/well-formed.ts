/**
 * Reads XML strictly enough for our pictures: every tag closed in order, every attribute quoted and given once, every
 * sign escaped, one root. Answers the names of the elements in order; throws a sentence at the first mistake.
 */
const TAG = /^<(\/?)([a-z]+)((?:\s+[a-zA-Z:-]+="[^"<]*")*)\s*(\/?)>/u;
const ESCAPED = /^&(?:amp|lt|gt|quot);/u;

export function tagsOf(xml: string): readonly string[] {
  const found: string[] = [];
  const open: string[] = [];
  for (let at = 0; at < xml.length;) {
    const rest = xml.slice(at);
    if (xml[at] === '<') {
      const tag = TAG.exec(rest);
      if (!tag) throw new Error(`not a tag: ${rest.slice(0, 60)}`);
      const [whole, closing, name = '', attributes = '', single] = tag;
      requireOnce(attributes);
      if (closing === '/') {
        const expected = open.pop();
        if (expected !== name) throw new Error(`</${name}> closes <${expected}>`);
      } else {
        if (open.length === 0 && found.length > 0) throw new Error(`second root <${name}>`);
        found.push(name);
        if (single !== '/') open.push(name);
      }
      at += whole.length;
    } else if (xml[at] === '&') {
      const escape = ESCAPED.exec(rest);
      if (!escape) throw new Error(`bare & at ${rest.slice(0, 20)}`);
      at += escape[0].length;
    } else if (xml[at] === '>' || open.length === 0) {
      throw new Error(`stray text: ${rest.slice(0, 20)}`);
    } else {
      at += 1;
    }
  }
  if (open.length > 0) throw new Error(`never closed: ${open.join(', ')}`);
  return found;
}

function requireOnce(attributes: string): void {
  const names = [...attributes.matchAll(/([a-zA-Z:-]+)="([^"]*)"/gu)].map(([, name, value = '']) => {
    if (/&(?!amp;|lt;|gt;|quot;)/u.test(value)) throw new Error(`bare & in ${name}`);
    return name;
  });
  if (new Set(names).size !== names.length) throw new Error(`attribute given twice: ${attributes}`);
}
