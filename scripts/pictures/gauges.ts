// The picture of gauge settings in the README, drawn from what the calculation finds.
import { cornerHoles } from '../../src/core/layout/cornerHoles.js';
import { formatLength } from '../../src/core/quantity/formatLength.js';
import type { GaugeSetting } from '../../src/core/setup/gaugeSetting.js';
import { gaugeSettings } from '../../src/core/setup/gaugeSettings.js';
import type { Turns } from '../../src/core/setup/way.js';

const inch = 25.4;
const plate = { lengthMm: 12 * inch, widthMm: 10 * inch };
const holes = cornerHoles({ ...plate, fromEndMm: 2 * inch, fromSideMm: 2 * inch, unit: 'in' });
const anywhere = { least: 0, most: Infinity };
const reach = { fence: anywhere, leftStop: anywhere };

const scale = 14 / inch;
const [wide, high] = [plate.lengthMm * scale, plate.widthMm * scale];
const panelWide = 250;
const top = 44;
const titles: Record<Turns, string> = {
  none: 'As it lies',
  half: 'Turned end for end',
  flip: 'Turned and flipped',
};

/** Three panels side by side: a base plate with each of the allowed turns. */
export function gaugePicture(): string {
  const turns: readonly Turns[] = ['none', 'half', 'flip'];
  const found = turns.map((each) => gaugeSettings({ ...plate, holes, turns: each, reach }).settings);
  const counts = found.map(({ length }, at) => `${titles[turns[at] ?? 'none']}: ${length}`).join('; ');
  const panels = found.map((settings, at) => panel(turns[at] ?? 'none', settings, at));
  const height = top + high + 40 + 18 * 4;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${panelWide * 3} ${height}" role="img" font-family="sans-serif" font-size="13">`,
    `<title>Gauge settings of a base plate 12 by 10 in with a hole 2 in from each end and side. ${counts}.</title>`,
    `<rect width="100%" height="100%" fill="white"/>`,
    ...panels,
    '</svg>',
    '',
  ].join('\n');
}

function panel(turns: Turns, settings: readonly GaugeSetting[], at: number): string {
  const left = at * panelWide + 40;
  const bottom = top + high;
  const count = `${settings.length} setting${settings.length === 1 ? '' : 's'}`;
  return [
    `<g fill="black" stroke="none">`,
    `<text x="${left}" y="16" font-weight="bold">${titles[turns]}</text>`,
    `<text x="${left}" y="33">${count}</text>`,
    `<rect x="${left}" y="${top}" width="${wide}" height="${high}" fill="none" stroke="black" stroke-width="2.5"/>`,
    `<path d="M${left - 10} ${bottom + 6}h${wide + 20}" stroke="black" stroke-width="6"/>`,
    `<path d="M${left - 3} ${bottom - 12}l-12 -7v14z"/>`,
    `<text x="${left + wide - 34}" y="${bottom + 24}">fence</text>`,
    `<text x="${left - 32}" y="${bottom - 26}">stop</text>`,
    ...holes.map(({ x, y }, hole) => numbered(left + x * scale, bottom - y * scale, hole, settings)),
    ...(turns === 'none' ? [] : [turnedArrow(left + wide / 2, top + high / 2)]),
    ...settings.map((setting, number) => settingText(setting, number, left, bottom + 44)),
    '</g>',
  ].join('\n');
}

/** A hole with the number of its setting; dashed where the plate lies otherwise for it. */
function numbered(x: number, y: number, hole: number, settings: readonly GaugeSetting[]): string {
  const number = settings.findIndex(({ hits }) => hits.some((hit) => hit.hole === hole));
  const turn = settings[number]?.hits.find((hit) => hit.hole === hole)?.turn;
  const dash = turn === 'as it lies' ? '' : ' stroke-dasharray="3 2.5"';
  return [
    `<circle cx="${x}" cy="${y}" r="10" fill="white" stroke="black" stroke-width="1.5"${dash}/>`,
    `<text x="${x}" y="${y + 4.5}" text-anchor="middle">${number + 1}</text>`,
  ].join('');
}

function turnedArrow(x: number, y: number): string {
  return `<path d="M${x - 13} ${y + 5}a14 14 0 1 1 26 0" fill="none" stroke="black" stroke-width="1.5"/><path d="M${x + 13} ${y + 13}l-5 -9h10z"/>`;
}

function settingText({ stopMm, fenceMm, hits }: GaugeSetting, number: number, x: number, y: number): string {
  const [stop, fence] = [formatLength(stopMm, 'in'), formatLength(fenceMm, 'in')];
  const words = `${number + 1}: stop ${stop}, fence ${fence}, ${hits.length} hole${hits.length === 1 ? '' : 's'}`;
  return `<text x="${x}" y="${y + 18 * number}">${words}</text>`;
}
