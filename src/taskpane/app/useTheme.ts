import { type Theme, webDarkTheme, webLightTheme } from '@fluentui/react-components';
import { useEffect, useState } from 'react';

/** Light or dark as the spreadsheet host is; as the system is where the host does not say. */
export function useTheme(): Theme {
  const [dark, setDark] = useState(isDark);
  useEffect(() => {
    const query = darkQuery();
    const follow = () => setDark(isDark());
    query?.addEventListener('change', follow);
    return () => query?.removeEventListener('change', follow);
  }, []);
  return dark ? webDarkTheme : webLightTheme;
}

function isDark(): boolean {
  const background =
    typeof Office === 'undefined' ? undefined : Office.context?.officeTheme?.bodyBackgroundColor;
  return background === undefined ? (darkQuery()?.matches ?? false) : luminance(background) < 0.5;
}

function darkQuery(): MediaQueryList | undefined {
  return typeof window.matchMedia === 'function'
    ? window.matchMedia('(prefers-color-scheme: dark)')
    : undefined;
}

/** A color such as #1F1F1F from 0, black, to 1, white. */
function luminance(color: string): number {
  const parts = /^#?([\da-f]{2})([\da-f]{2})([\da-f]{2})$/i.exec(color)?.slice(1) ?? ['ff', 'ff', 'ff'];
  const [red = 1, green = 1, blue = 1] = parts.map((part) => Number.parseInt(part, 16) / 255);
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
