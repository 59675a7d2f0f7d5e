/** Gives names that are unique in one scope. Designators may repeat in a project; in an exchange file they must not. */
export class UniqueNames {
  private readonly taken = new Set<string>();

  /** The name itself for the first who asks; behind it the id for the others, which does not change from export to export. */
  give(name: string, id: string): string {
    let unique = name === '' ? id : name;
    if (this.taken.has(unique)) unique = `${unique} (${id})`;
    while (this.taken.has(unique)) unique += "'";
    this.taken.add(unique);
    return unique;
  }
}
