import type { WorkedFigure } from '@latchwork/core/derive/worked-figure';
import { shownNumber } from '@latchwork/core/calc/quantity-text';
import { WorkedCalc } from '../../ui/calc-working';
import { LimitBar } from '../../ui/limit-bar';
import { Length, Quantity } from '../../ui/quantity';
import { unitText } from '../../ui/unit-text';
import { Section } from './section';

/** Everything that is computed about an object; each number opens to its working. */
export function ComputedSection({ figures, of }: { figures: readonly WorkedFigure[]; of: string }) {
  if (figures.length === 0) return null;
  return (
    <Section title="Computed">
      {figures.map((f) => (
        <div className="field" key={f.key}>
          <span className="field-label">{f.label}</span>
          <span className="field-value">
            <FigureValue figure={f} of={of} />
          </span>
        </div>
      ))}
    </Section>
  );
}

function FigureValue({ figure, of }: { figure: WorkedFigure; of: string }) {
  const { value, working, mark, needs, label, most, unit } = figure;
  if (value === undefined || !working) return <span className="cannot-verify">needs {needs.join(', ')}</span>;
  return (
    <>
      <WorkedCalc
        title={`${label}: ${of}`}
        working={working}
        before={
          most === undefined ? null : (
            <LimitBar value={significant(value)} max={significant(most)} unit={unitText(unit)} />
          )
        }
      >
        <FigureText value={value} unit={unit} />
      </WorkedCalc>{' '}
      <span className="second">{mark}</span>
    </>
  );
}

const significant = (value: number): number => Number(value.toPrecision(4));

/** Thousandths where a value is small, so that the digits stand before the unit. */
function FigureText({ value, unit }: { value: number; unit: string }) {
  if (unit === 'mm') return <Length mm={value} />;
  const [shown, name] =
    unit === 'ohm' && value < 1 ? [value * 1000, 'mohm'] : unit === 'A' && value < 0.1 ? [value * 1000, 'mA'] : [value, unit]; // prettier-ignore
  return <Quantity value={shownNumber(significant(shown))} unit={unitText(name)} />;
}
