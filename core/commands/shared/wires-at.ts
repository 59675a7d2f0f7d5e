import type { Project } from '../../model/project';
import type { Wire } from '../../model/wire';

/** Wires that end at one of these connectors. A plain loop: it is asked of ten thousand wires while one is drawn. */
export function wiresAt(project: Project, connectors: ReadonlySet<string>): readonly Wire[] {
  const out: Wire[] = [];
  if (connectors.size === 0) return out;
  for (const w of project.wires) {
    const [a, b] = w.ends;
    if (
      (a.at === 'cavity' && connectors.has(a.connector)) ||
      (b.at === 'cavity' && connectors.has(b.connector))
    )
      out.push(w);
  }
  return out;
}
