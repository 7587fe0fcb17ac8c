import { gaps, marks } from "../tokens.ts";
import { type Shape, type Stretch, shapeLength } from "./shape.ts";

const gap = gaps.broken;
const leastFront = 9;

/** Room that a break line takes on paper, mm. */
export const breakRoom = marks.broken;

/** The stretches of a shape (true mm) that fit `room` mm on paper at `scale`: all of it, or its front and, where there is room, the stretch worth seeing behind a break. */
export function breakOff(shape: Shape, room: number, scale = 1): readonly Stretch[] {
  const total = shapeLength(shape);
  if (total * scale <= room) return [{ from: 0, to: total, at: 0 }];
  const free = (room - breakRoom) / scale;
  const { focus } = shape;
  const front = focus === undefined ? 0 : free - gap / scale - (focus.to - focus.from);
  if (focus === undefined || front * scale < leastFront || front >= focus.from)
    return [{ from: 0, to: free, at: 0 }];
  return [
    { from: 0, to: front, at: 0 },
    { ...focus, at: front + gap / scale },
  ];
}
