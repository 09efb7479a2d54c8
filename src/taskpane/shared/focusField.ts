/** What links find a field by: `data-field={name}` stands on it. */
export function focusField(name: string): boolean {
  const fields = [...document.querySelectorAll<HTMLElement>('[data-field]')];
  const field = fields.find((each) => each.dataset['field'] === name);
  const fold = field?.closest('details');
  if (fold) fold.open = true;
  field?.focus();
  return field !== undefined;
}
