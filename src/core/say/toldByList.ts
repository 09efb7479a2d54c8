/** Sentences of each list; where there are several lists, each sentence begins with the name of its own. */
export function toldByList<List extends { name: string }>(
  lists: readonly List[],
  sentencesOf: (list: List) => string[],
): string[] {
  return lists.flatMap((list) => {
    const sentences = sentencesOf(list);
    return lists.length === 1 ? sentences : sentences.map((sentence) => `${list.name}: ${sentence}`);
  });
}
