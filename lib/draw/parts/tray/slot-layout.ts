import { gaps } from "../../tokens.ts";
import type { SlotPicture } from "./slot-picture.ts";
import type { TextBlock } from "./slot-text.ts";

/** Where a slot's words and picture stand, mm from the slot's inner corner; an upright picture is turned to hang down from its place. */
export type SlotLayout = {
  readonly text: TextBlock;
  readonly textAt: readonly [number, number];
  /** By how much the words run over where not even they fit, mm. */
  readonly over?: number;
  readonly picture?: {
    readonly at: readonly [number, number];
    readonly length: number;
    readonly upright: boolean;
    readonly beside?: true;
  };
};

export type Wording = (width: number) => TextBlock;
/** Room for words, mm, whether what lies in it stands upright, and by how much a whole picture under them may reach past it to the left and to the right. */
export type SlotRoom = {
  readonly width: number;
  readonly height: number;
  readonly upright: boolean;
  readonly spare?: readonly [number, number];
};
/** A picture and whether its body may be broken off: only where it is longer than the slot, or for the words' sake too. */
export type Shown = {
  readonly picture: SlotPicture;
  readonly broken: "where longer" | "where needed";
};
type Way = (
  wording: Wording,
  picture: SlotPicture,
  room: SlotRoom,
  cut: boolean,
) => SlotLayout | undefined;

const gap = gaps.slot;
const leastPicture = 14;
const leastText = 10;
const rounding = 1e-6;

/** The first arrangement in which words and picture fit without touching: the whole picture with the first wordings that go with it,
 * else a broken-off one; words alone where nothing is to be shown. Undefined where none fits. */
export function layOutSlot(
  room: SlotRoom,
  wordings: readonly Wording[],
  shown: Shown | undefined,
): SlotLayout | undefined {
  if (shown === undefined) {
    const text = wordings
      .map((wording) => wording(room.width))
      .find((block) => fits(block, room.width, room.height));
    return text && { text, textAt: [0, 0] };
  }
  const { picture, broken } = shown;
  const ways: readonly Way[] = room.upright ? [upright, above, beside] : [above, beside];
  const cuts = picture.cuts && (broken === "where needed" || isLonger(picture, room));
  for (const cut of cuts ? [false, true] : [false])
    for (const way of ways)
      for (const wording of wordings) {
        const found = way(wording, picture, room, cut);
        if (found !== undefined) return found;
      }
  return undefined;
}

/** Words that run over their slot, marked by how much. */
export function overfull(room: SlotRoom, wording: Wording): SlotLayout {
  const text = wording(room.width);
  const over = Math.max(text.width - room.width, text.height - room.height);
  return { text, textAt: [0, 0], ...(over > 0 ? { over } : {}) };
}

const isLonger = (
  { length }: SlotPicture,
  { width, height, upright, spare = [0, 0] }: SlotRoom,
): boolean => length > (upright ? height : width + spare[0] + spare[1]);

const fits = (text: TextBlock, width: number, height: number): boolean =>
  text.width <= width && text.height <= height;

function lengthFor(picture: SlotPicture, room: number, cut: boolean): number | undefined {
  if (picture.length <= room) return picture.length;
  return cut && room >= leastPicture ? room : undefined;
}

function above(
  wording: Wording,
  picture: SlotPicture,
  { width, height, spare: [left, right] = [0, 0] }: SlotRoom,
  cut: boolean,
): SlotLayout | undefined {
  const text = wording(width);
  const length = lengthFor(picture, cut ? width : width + left + right, cut);
  if (length === undefined || !fits(text, width, height)) return undefined;
  const rest = height - text.height - gap;
  const x = length > width ? (width + right - left - length) / 2 : (width - length) / 2;
  if (rest < picture.height(length)) return undefined;
  return {
    text,
    textAt: [0, 0],
    picture: { at: [x, text.height + gap + rest / 2], length, upright: false },
  };
}

function beside(
  wording: Wording,
  picture: SlotPicture,
  { width, height }: SlotRoom,
  cut: boolean,
): SlotLayout | undefined {
  const words = wording(width);
  const share = cut
    ? width - Math.min(words.width, width * 0.6) - 2 * gap
    : width - leastText - 2 * gap;
  const length = lengthFor(picture, share, cut);
  if (length === undefined || picture.height(length) > height) return undefined;
  const rest = width - length - 2 * gap + rounding;
  const text = wording(rest);
  if (!fits(text, rest, height)) return undefined;
  return {
    text,
    textAt: [0, 0],
    picture: { at: [width - length, height / 2], length, upright: false, beside: true },
  };
}

function upright(
  wording: Wording,
  picture: SlotPicture,
  { width, height }: SlotRoom,
  cut: boolean,
): SlotLayout | undefined {
  const text = wording(width);
  const below = lengthFor(picture, height - text.height - gap, cut);
  if (below !== undefined && fits(text, width, height) && picture.height(below) <= width) {
    const top = text.height + gap + (height - text.height - gap - below) / 2;
    return {
      text,
      textAt: [0, 0],
      picture: { at: [width / 2, top], length: below, upright: true },
    };
  }
  const length = lengthFor(picture, height, cut);
  if (length === undefined) return undefined;
  const wide = picture.height(length);
  const narrow = wording(width - wide - gap);
  if (width - wide - gap < leastText || !fits(narrow, width - wide - gap, height)) return undefined;
  return {
    text: narrow,
    textAt: [wide + gap, 0],
    picture: { at: [wide / 2, (height - length) / 2], length, upright: true },
  };
}
