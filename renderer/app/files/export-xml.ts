import type { DocumentOptions, Exporter } from '@latchwork/core/exports/exporter';
import { say } from '../../ui/toasts';
import { callHost } from '../host';
import { documentInput } from './document-input';
import { exportAs } from './export-as';

/** Writes a document in the XML format of its standard to a file of the user's choice. */
export function exportXml(document: Exporter, options?: DocumentOptions): Promise<void> | void {
  const form = document.xml;
  if (!form) throw new Error(`${document.id} is not made as XML`);
  const text = form.text(documentInput(options));
  if (!text.ok) return say('problem', `Nothing was exported. ${text.problem}`);
  return exportAs(document, `.${form.extension}`, (target) =>
    callHost('file:export', {
      bytesBase64: base64Of(text.value),
      mediaType: form.mediaType,
      filters: [{ name: form.standard, extensions: [form.extension] }],
      ...target,
    }),
  );
}

/** UTF-8 as base64, piece by piece: a call takes only so many arguments. */
function base64Of(text: string): string {
  const bytes = new TextEncoder().encode(text);
  let binary = '';
  for (let i = 0; i < bytes.length; i += 0x8000)
    binary += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(binary);
}
