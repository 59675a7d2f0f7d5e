import { fileURLToPath } from 'node:url';
import { readFileSync } from 'node:fs';
import { XmlDocument, XmlValidateError, XsdValidator, xmlRegisterInputProvider } from 'libxml2-wasm';
import { fsInputProviders } from 'libxml2-wasm/lib/nodejs.mjs';

xmlRegisterInputProvider(fsInputProviders);

const compiled = new Map<string, XsdValidator>();

/** The schema at a path, compiled once: the larger ones take a while. */
function validatorOf(schemaPath: string): XsdValidator {
  const known = compiled.get(schemaPath);
  if (known) return known;
  const path = fileURLToPath(new URL(`../../../files/standards/${schemaPath}`, import.meta.url));
  const schema = XmlDocument.fromString(readFileSync(path, 'utf8'), { url: path });
  const validator = XsdValidator.fromDoc(schema);
  schema.dispose();
  compiled.set(schemaPath, validator);
  return validator;
}

/** What a schema of `tests/files/standards` has to say against a text; empty: valid. Outside: libxml2. */
export function schemaErrors(schemaPath: string, text: string): readonly string[] {
  const document = XmlDocument.fromString(text);
  try {
    validatorOf(schemaPath).validate(document);
    return [];
  } catch (error) {
    if (!(error instanceof XmlValidateError)) throw error;
    return error.details.map((d) => d.message.trim());
  } finally {
    document.dispose();
  }
}
