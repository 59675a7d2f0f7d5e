import type { HeaderPart } from '@latchwork/core/model/parts/header';
import type { HousingPart } from '@latchwork/core/model/parts/housing';
import { halfNumber, header, housing } from './halves';
import type { Family } from './family';
import { record } from './records';

const THREE = { ways: 3, rows: 1 } as const;

/** A record under another number: id, number and description change, everything else stays. */
function renamed<P extends HousingPart | HeaderPart>(like: P, partNumber: string, description: string): P {
  const { id, partNumber: number } = record({
    maker: 'connectors',
    partNumber,
    description,
    massG: like.massG ?? 0,
  });
  return { ...like, id, partNumber: number, description };
}

/**
 * Halves that break the habit of the family: body form, contact kind and the corner of cavity 1 are attributes of
 * their own. QS and QP mate with each other, HX with nothing straight across.
 */
export function alderVariants(f: Family): (HousingPart | HeaderPart)[] {
  const sockets = housing(f, THREE, 'A', 'socket', 'free');
  const pins = housing(f, THREE, 'A', 'pin', 'free');
  const counted = header(f, THREE, 'A', {
    orientation: 'vertical',
    termination: 'through-hole',
    finish: 'tin',
  });
  return [
    {
      ...renamed(
        sockets,
        halfNumber(f, THREE, 'QS', 'A'),
        `${f.name}, free housing for sockets with the body of a plug, 3 ways, 3 mm, key A, natural`,
      ),
      bodyForm: 'plug',
    },
    {
      ...renamed(
        pins,
        halfNumber(f, THREE, 'QP', 'A'),
        `${f.name}, free housing for pins with the body of a receptacle, 3 ways, 3 mm, key A, natural`,
      ),
      bodyForm: 'receptacle',
    },
    {
      ...renamed(
        counted,
        halfNumber(f, THREE, 'HX', 'A'),
        `${f.name}, vertical through-hole header with pins, 3 ways, 3 mm, key A, natural, tin, counted from the other end`,
      ),
      cavityOneCorner: 'top-left',
    },
  ];
}
