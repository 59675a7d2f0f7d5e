import type { ResolvedWire } from '@latchwork/core/derive/harness';
import { lengthText } from '@latchwork/core/model/length-text';
import { useApp } from '../../app/store';

/** What the length of a wire by its route is made of, in one line. */
export function LengthMakeUp({ wire }: { wire: ResolvedWire }) {
  const unit = useApp((s) => s.view.lengthUnit);
  const { routeMm, allowancesMm, takeUpMm, extraMm, byRouteMm, kind } = wire.length;
  if (routeMm === undefined || byRouteMm === undefined) return null;
  const parts = [
    ['route', routeMm],
    ['from', allowancesMm[0]],
    ['to', allowancesMm[1]],
    ['take-up', takeUpMm],
    ['extra', extraMm],
  ] as const;
  return (
    <div className="field">
      <span className="field-label">{kind === 'typed' ? 'By its route' : 'Made of'}</span>
      <span className="field-value second">
        {parts
          .filter(([name, mm]) => name === 'route' || mm !== 0)
          .map(
            ([name, mm], i) =>
              `${i === 0 ? '' : mm < 0 ? '− ' : '+ '}${name} ${lengthText(Math.abs(mm), unit)}`,
          )
          .join(' ')}
        {kind === 'typed' ? ` = ${lengthText(byRouteMm, unit)}` : ''}
      </span>
    </div>
  );
}
