/** The grid's engine is written for browsers of the day: what Node 20 lacks of their language is added here. */
declare global {
  interface ObjectConstructor {
    groupBy?: <Item>(
      items: Iterable<Item>,
      keyOf: (item: Item) => PropertyKey,
    ) => Record<PropertyKey, Item[]>;
  }
}

Object.groupBy ??= (items, keyOf) => {
  const groups: Record<PropertyKey, unknown[]> = Object.create(null) as Record<PropertyKey, unknown[]>;
  for (const item of items) (groups[keyOf(item)] ??= []).push(item);
  return groups as never;
};

// It times everything it does.
console.debug = () => undefined;

export {};
