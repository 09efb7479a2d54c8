import type { FaceId } from '../../part/part.js';
import type { AnySection, ChannelSection } from '../../section/section.js';

/** A side of a section that can be worked: its width, its thickness, and whether it starts at a heel. */
export interface FaceSize {
  id: FaceId;
  widthMm: number;
  thicknessMm: number;
  /** A heel or the back of a web lies at the bottom, a toe at the top; plates and webs have two free edges. */
  heel: boolean;
}

const known = new WeakMap<AnySection, readonly FaceSize[]>();

/**
 * The faces of a section that holes can be punched in; none of solid bars, tubes and what else is only sawn. Rows of a
 * list have the same few sections: each has its faces once.
 */
export function facesOf(section: AnySection): readonly FaceSize[] {
  const before = known.get(section);
  if (before) return before;
  const faces = newFacesOf(section);
  known.set(section, faces);
  return faces;
}

function newFacesOf(section: AnySection): FaceSize[] {
  switch (section.kind) {
    case 'flat': {
      const { widthMm, thicknessMm } = section;
      return [{ id: 'plate', widthMm, thicknessMm, heel: false }];
    }
    case 'angle': {
      const { legAMm, legBMm, thicknessMm } = section;
      return [
        { id: 'leg A', widthMm: legAMm, thicknessMm, heel: true },
        { id: 'leg B', widthMm: legBMm, thicknessMm, heel: true },
      ];
    }
    case 'channel':
      return [
        { id: 'web', widthMm: section.depthMm, thicknessMm: section.webThicknessMm, heel: false },
        flangeOf(section, 'flange 1'),
        flangeOf(section, 'flange 2'),
      ];
    default:
      return [];
  }
}

/** A flange with its nominal thickness. */
function flangeOf(section: ChannelSection, id: FaceId): FaceSize {
  return {
    id,
    widthMm: section.flangeWidthMm,
    thicknessMm: section.flangeThicknessMm,
    heel: true,
  };
}
