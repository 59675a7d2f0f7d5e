import { Command } from 'cmdk';
import { useState } from 'react';
import { findObjects } from './find-objects';
import { openOverlay, useOverlay } from './overlays';
import { CommandWindow } from './palette';
import { showable } from './selection';
import { appStore, useApp } from './store';

/** Search for objects by designator, part number or signal. */
export function Finder() {
  return useOverlay() === 'finder' ? <OpenFinder /> : null;
}

function OpenFinder() {
  const harness = useApp((s) => s.harness);
  const [text, setText] = useState('');
  const found = findObjects(harness, text);
  return (
    <CommandWindow
      label="Find an object"
      placeholder="Designator, part number or signal"
      shouldFilter={false}
      onSearch={setText}
    >
      <Command.Empty className="palette-empty">
        {text ? `Nothing in this project is called "${text}".` : 'This project holds no objects yet.'}
      </Command.Empty>
      {found.map((o) => (
        <Command.Item
          key={`${o.ref.type} ${o.ref.id}`}
          value={`${o.ref.type} ${o.ref.id}`}
          onSelect={() => {
            openOverlay(null);
            const { history, reveal } = appStore.getState();
            reveal(showable(history.project, [o.ref]), o.page);
          }}
        >
          <span className="find-name">{o.name}</span>
          <span className="find-kind">{o.kind}</span>
          <span className="find-about">{o.about}</span>
        </Command.Item>
      ))}
    </CommandWindow>
  );
}
