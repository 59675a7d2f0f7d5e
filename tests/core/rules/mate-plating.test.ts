import { deriveHarness } from '@latchwork/core/derive/derive-harness';
import type { Project } from '@latchwork/core/model/project';
import { tiny, type TinyDraft } from '@latchwork/core/model/tiny';
import { checkHarness } from '@latchwork/core/rules/check-harness';
import { matePlating } from '@latchwork/core/rules/mate-plating';
import { describe, expect, it } from 'vitest';

const said = (project: Project): string[] =>
  checkHarness(deriveHarness(project), [matePlating]).findings.map(
    (f) => `${f.result} ${f.data.cavities ?? f.needs.map((n) => n.what).join()}`,
  );

/** Gives the contact of W2 at X1 a gold finish, the other stays tin. */
function goldInCavity2(t: TinyDraft): void {
  const end = t.wire('W2').ends[0];
  const contact = t.project.contacts.find((c) => end.at === 'cavity' && c.id === end.contact);
  contact!.part = t.part('contact', 'C-SOCKET-AU').id;
}

describe('finishes over a mate', () => {
  it('follow the map, not the numbers', () => {
    const project = tiny((t) => {
      goldInCavity2(t);
      t.project.mates = [{ ...t.project.mates[0]!, b: t.connector('X2').id }];
      const end = t.wire('W1').ends[1];
      const pin = t.project.contacts.find((c) => end.at === 'cavity' && c.id === end.contact)!;
      const gold = {
        ...t.part('contact', 'C-PIN'),
        id: t.newId(),
        partNumber: 'C-PIN-AU',
        finish: 'gold' as const,
      };
      t.project.parts.push(gold);
      pin.part = gold.id;
      t.project.mates[0]!.map = [
        { a: '1', b: '2' },
        { a: '2', b: '1' },
        { a: '3', b: '3' },
      ];
    });
    expect(said(project)).toEqual([]);
  });

  it('cannot be told of mixed contacts where it is not known which meet', () => {
    const project = tiny((t) => {
      goldInCavity2(t);
      delete t.part('header', 'HEADER').cavityOneCorner;
    });
    // The header is tin in all cavities, so the gold contact meets tin wherever it sits; the tin one does not.
    expect(said(project)).toEqual(['cannot-verify which cavities meet']);
  });

  it('are wrong wherever they meet if no pair of them agrees', () => {
    const project = tiny((t) => {
      t.part('contact', 'C-SOCKET').finish = 'gold';
      delete t.part('header', 'HEADER').cavityOneCorner;
    });
    expect(said(project)).toEqual(['fail 1, 2']);
  });

  it('count a spare contact too', () => {
    const project = tiny((t) => {
      const id = t.newId();
      t.project.contacts.push({ id, part: t.part('contact', 'C-SOCKET-AU').id });
      t.connector('X1').cavities = [{ cavity: '3', state: 'spare-contact', contact: id }];
    });
    expect(said(project)).toEqual(['fail 3']);
  });

  it('leave out a position of the header that its maker closed', () => {
    const project = tiny((t) => {
      goldInCavity2(t);
      t.part('header', 'HEADER').keyPositions = ['2'];
    });
    expect(said(project)).toEqual([]);
  });
});
