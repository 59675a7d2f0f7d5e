import { type Result, ok, problem } from '@latchwork/core/base/result';
import { withBaseline } from '@latchwork/core/exports/document-head';
import type { DocumentInput, Exporter } from '@latchwork/core/exports/exporter';
import { baselineOf } from '@latchwork/core/model/baseline';
import type { FileFormat } from '@latchwork/core/exports/file-format';
import { documentBytes } from './document-bytes';
import { drawingBytes } from './drawing-bytes';
import { paperBytes } from './paper-bytes';

/** A document of a project as the bytes of a file; or why there is none, in words. */
export async function documentFile(
  exporter: Exporter,
  input: DocumentInput,
  format: FileFormat,
  fontsFolder: string,
): Promise<Result<Uint8Array, string>> {
  const { project } = input.harness;
  switch (format) {
    case 'pdf': {
      const paper = exporter.paper?.(input);
      return paper ? paperBytes(paper, fontsFolder) : problem(`${exporter.title} is not made as PDF.`);
    }
    case 'svg':
    case 'dxf': {
      const drawing = exporter.drawing?.(input);
      return drawing
        ? ok(drawingBytes(drawing, `${exporter.title}: ${project.titleBlock.title}`, format))
        : problem(`${exporter.title} is not made as a drawing: there is no ${format.toUpperCase()} of it.`);
    }
    case 'xml': {
      if (!exporter.xml) return problem(`${exporter.title} is not made as XML.`);
      const text = exporter.xml.text(input);
      return text.ok ? ok(Buffer.from(text.value, 'utf8')) : problem(`${exporter.title}: ${text.problem}`);
    }
    default:
      return ok(await documentBytes(withBaseline(exporter.table(input), baselineOf(project)), format));
  }
}
