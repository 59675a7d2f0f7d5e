import type { DocumentOptions } from '@latchwork/core/exports/exporter';
import { CODE_WORDS, LabelCode } from '@latchwork/core/exports/labels/label-code';
import { LABEL_TEMPLATES, type LabelSheet, templateWords } from '@latchwork/core/exports/labels/templates';
import { ChoiceField } from '../../ui/choice-field';
import { NumberField } from '../../ui/number-field';
import { askOf } from './papers-view';

interface AskProps {
  readonly id: string;
  readonly options: DocumentOptions;
}

const SHEETS: readonly { readonly value: LabelSheet; readonly text: string }[] = [
  { value: 'a4', text: 'A4, by the size of each label' },
  { value: 'letter', text: 'Letter, by the size of each label' },
  ...LABEL_TEMPLATES.map((t) => ({ value: t.id, text: templateWords(t) })),
];

export function LabelSheetAsk({ id, options }: AskProps) {
  return (
    <ChoiceField
      label="Label sheets"
      value={options.labelSheet ?? 'a4'}
      choices={SHEETS}
      choose={(value) => askOf(id, 'labelSheet', value)}
    />
  );
}

export function LabelCodeAsk({ id, options }: AskProps) {
  return (
    <ChoiceField
      label="Codes"
      value={options.labelCode ?? 'qr'}
      choices={LabelCode.options.map((value) => ({ value, text: CODE_WORDS[value] }))}
      choose={(value) => askOf(id, 'labelCode', value)}
    />
  );
}

export function LabelStartAsk({ id, options }: AskProps) {
  return (
    <NumberField
      label="First free label"
      value={options.labelStart}
      whole
      positive
      placeholder="1"
      commit={(value) => {
        askOf(id, 'labelStart', value ?? undefined);
        return null;
      }}
    />
  );
}
