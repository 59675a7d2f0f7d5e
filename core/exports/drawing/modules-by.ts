import { barModules, type CodeItem, type CodeModules, fieldModules, type ModulesOf } from './code-modules';

/** What an encoder answers: widths of bars and spaces, or the fields of a square. */
type Encoded =
  { readonly sbs: readonly number[] } | { readonly pixs: readonly number[]; readonly pixx: number };

/** An encoder by name of the symbology. It throws on what it cannot say. */
export type Encoder = (name: string, text: string) => readonly Encoded[];

const REMEMBERED = 2000;

/** Modules from an encoder, each text encoded once. Null where it cannot: Code 128 is kept to printable ASCII. */
export function modulesBy(encoder: Encoder): ModulesOf {
  const made = new Map<string, CodeModules | null>();
  return (symbology, text) => {
    const key = `${symbology} ${text}`;
    let code = made.get(key);
    if (code === undefined) {
      if (made.size > REMEMBERED) made.clear();
      made.set(key, (code = encode(encoder, symbology, text)));
    }
    return code;
  };
}

function encode(encoder: Encoder, symbology: CodeItem['symbology'], text: string): CodeModules | null {
  if (symbology === 'code-128' && !/^[\x20-\x7e]+$/.test(text)) return null;
  try {
    const [code] = encoder(symbology === 'qr' ? 'qrcode' : 'code128', text);
    if (!code) return null;
    return 'sbs' in code ? barModules(code.sbs) : fieldModules(code.pixs, code.pixx);
  } catch {
    // Too long for any size of the code.
    return null;
  }
}
