const lineages = new WeakMap<object, object>();

/** One object for all projects that edits made from one another: what follows the edits is kept by it. */
export function lineageOf(project: object): object {
  let lineage = lineages.get(project);
  if (!lineage) lineages.set(project, (lineage = {}));
  return lineage;
}

/** States that a project was made from another by an edit. */
export function followLineage(before: object, after: object): void {
  if (!lineages.has(after)) lineages.set(after, lineageOf(before));
}
