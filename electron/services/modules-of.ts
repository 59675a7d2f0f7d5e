import bwip from 'bwip-js/generic';
import {
  barModules,
  type CodeItem,
  type CodeModules,
  fieldModules,
  type ModulesOf,
} from '@latchwork/core/exports/drawing/code-modules';

const made = new Map<string, CodeModules | null>();

/** Encodes a text as Code 128 or QR. Null where it cannot: Code 128 speaks ASCII only, and both have an end. */
export const modulesOf: ModulesOf = (symbology, text) => {
  const key = `${symbology} ${text}`;
  let code = made.get(key);
  if (code === undefined) {
    if (made.size > 2000) made.clear();
    made.set(key, (code = encode(symbology, text)));
  }
  return code;
};

function encode(symbology: CodeItem['symbology'], text: string): CodeModules | null {
  if (symbology === 'code-128' && !/^[\x20-\x7e]+$/.test(text)) return null;
  try {
    const [code] = bwip.raw(symbology === 'qr' ? 'qrcode' : 'code128', text, {});
    if (!code) return null;
    return 'sbs' in code ? barModules(code.sbs) : fieldModules(code.pixs, code.pixx);
  } catch {
    // The encoder throws when the text is too long for any size of the code.
    return null;
  }
}
