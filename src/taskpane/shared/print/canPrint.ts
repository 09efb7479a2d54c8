/**
 * Whether a page in the pane may print and save files: in the hosts of these systems both do nothing, and say nothing.
 */
export function canPrint(): boolean {
  const platform: string | undefined =
    typeof Office === 'undefined' ? undefined : Office.context?.platform?.toString();
  return platform === undefined || !['Mac', 'iOS', 'Android'].includes(platform);
}
