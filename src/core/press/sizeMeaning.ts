import type { Sized } from '../check/pressFact.js';

/** What a size is, as a step of the working says it. */
export function sizeMeaning(sized: Sized): string {
  switch (sized.is) {
    case 'hole':
      return 'largest dimension of the hole';
    case 'cut':
      return 'width of the cut';
    case 'rip':
      return 'length of the rip';
    case 'leg':
      return 'longer leg';
    case 'round':
    case 'square':
      return `${sized.is} bar`;
    case 'bend':
      return 'length of the bend';
    case 'corner clip':
      return `${sized.side} side of the corner clip`;
    case 'part':
      return 'length of the part';
    case 'bar':
      return 'length of the bar it is cut from';
    case 'bar mass':
      return 'mass of the bar it is cut from';
    case 'mass':
      return 'mass of the part';
    case 'hole to nearer edge':
      return 'from the hole to the nearer edge';
    case 'hole to toe':
      return 'from the hole to the toe';
    case 'part below the die':
      return 'part hanging below the die';
    case 'thickness':
    case 'gap, thickness and die entry':
      return sized.is;
  }
}

/** Whether the size is a mass, in kg. */
export function isMass({ is }: Sized): boolean {
  return is === 'mass' || is === 'bar mass';
}
