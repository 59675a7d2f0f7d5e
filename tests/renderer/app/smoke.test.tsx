import { channels } from '@latchwork/core/bridge/channels';
import { Layer, Rect, Stage } from 'react-konva';
import { expect, it } from 'vitest';
import { render } from 'vitest-browser-react';

it('draws with react-konva in a real browser and sees core', async () => {
  const screen = await render(
    <Stage width={40} height={40}>
      <Layer>
        <Rect width={10} height={10} fill="red" />
      </Layer>
    </Stage>,
  );
  // react-konva builds its canvas a moment after React is done.
  await expect.poll(() => screen.container.querySelector('canvas')?.width).toBeGreaterThan(0);
  expect(channels).toContain('app:info');
});
