import type { Connector } from '@latchwork/core/model/connector';
import { byId } from '@latchwork/core/base/by-id';
import { beforeEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { appStore } from '../../../renderer/app/store';
import { freshWindow, idOf, openWindow, project } from '../window';

beforeEach(() => freshWindow());

async function inspector(designator: string) {
  appStore.getState().select([idOf(designator)]);
  const screen = await openWindow();
  return screen.getByRole('region', { name: 'Inspector' });
}

const connector = (designator: string): Connector | undefined =>
  project().connectors.find((c) => c.designator === designator);

const rules = (): string[] => [...new Set(appStore.getState().check.findings.map((f) => f.rule))];

it('takes the room around a connector, and a finding tells when it is too little', async () => {
  const card = await inspector('X1');
  const room = card.getByLabelText('Room on the mating axis');
  await userEvent.fill(room, '10');
  await userEvent.keyboard('{Enter}');
  await userEvent.fill(card.getByLabelText('Room beside the latch'), '0');
  await userEvent.keyboard('{Enter}');
  expect(connector('X1')).toMatchObject({ mateRoomMm: 10, latchRoomMm: 0 });
  await expect.poll(rules).toContain('mate-clearance');
  await userEvent.fill(room, '');
  await userEvent.keyboard('{Enter}');
  expect(connector('X1')?.mateRoomMm).toBeUndefined();
  await expect.poll(rules).not.toContain('mate-clearance');
});

it('takes where pad 1 of a header lies', async () => {
  const card = await inspector('X3');
  await userEvent.click(card.getByText('More', { exact: true }));
  await userEvent.selectOptions(card.getByLabelText('Pad 1'), 'top left');
  await userEvent.selectOptions(card.getByLabelText('Pads seen from'), 'the side of the header');
  expect(connector('X3')?.footprint).toEqual({ padOneCorner: 'top-left', seenFrom: 'header-side' });
  await expect.poll(rules).toContain('pin-one');
  await userEvent.selectOptions(card.getByLabelText('Pad 1'), 'top right');
  await expect.poll(rules).not.toContain('pin-one');
});

it('holds the records of the project against the shelf as soon as it changes', async () => {
  await openWindow();
  const { parts } = project();
  const pin = [...byId(parts).values()].find((p) => p.partNumber === 'C-PIN')!;
  const later = { ...pin, massG: 7, catalogue: { name: pin.catalogue?.name ?? '', revision: '99' } };
  appStore.getState().setCatalogue([later]);
  await expect.poll(rules).toContain('part-changed');
  const fix = appStore.getState().check.findings.find((f) => f.rule === 'part-changed')?.fix;
  expect(appStore.getState().dispatchFix({ id: fix?.command ?? '', args: fix?.args })).toBeNull();
  await expect.poll(rules).not.toContain('part-changed');
  expect(project().parts.find((p) => p.id === pin.id)?.massG).toBe(7);
});
