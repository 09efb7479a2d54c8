import { describe, expect, it } from 'vitest';
import { channels } from '../../../src/core/section/channelTable.js';

describe('channels', () => {
  it('have names that differ', () => {
    expect(new Set(channels.map((channel) => channel.name)).size).toBe(channels.length);
  });

  it.each(channels.map((channel) => [channel.name, channel] as const))(
    '%s has dimensions in the order of a channel, and room for its area',
    (_name, channel) => {
      const { depthMm, flangeWidthMm, webThicknessMm, flangeThicknessMm, areaMm2 } = channel;
      expect(depthMm).toBeGreaterThan(flangeWidthMm);
      expect(flangeWidthMm).toBeGreaterThan(flangeThicknessMm);
      // Rows of one depth share the flange thickness, so a heavy web may pass the flange.
      expect(webThicknessMm).toBeLessThan(2 * flangeThicknessMm);
      expect(areaMm2).toBeGreaterThan(webThicknessMm * depthMm);
    },
  );
});
