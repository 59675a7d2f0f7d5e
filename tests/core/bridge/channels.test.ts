import { channels } from '@latchwork/core/bridge/channels';
import { expect, it } from 'vitest';

it('names every channel once, as subject:verb', () => {
  expect(new Set(channels).size).toBe(channels.length);
  for (const channel of channels) expect(channel).toMatch(/^[a-z]+:[a-z-]+$/);
});
