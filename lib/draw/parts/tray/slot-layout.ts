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
  };
};

type Wording = (width: number) => TextBlock;
/** Room for words, mm, and by how much a whole picture under them may reach past it to the left and to the right. */
type Room = {
  readonly width: number;
  readonly height: number;
  readonly spare?: readonly [number, number];
};
type Way = (
  wording: Wording,
  picture: SlotPicture,
  room: Room,
  cut: boolean,
) => SlotLayout | undefined;

const gap = gaps.slot;
const leastPicture = 14;
const leastText = 10;

/** The first arrangement in which words and picture fit without touching: each group of wordings with the whole picture, then with a broken-off one; at last words alone, marked when even they do not fit. Fuller wordings come first. */
export function layOutSlot(
  room: Room,
  groups: readonly (readonly Wording[])[],
  picture: SlotPicture | undefined,
): SlotLayout {
  const ways: readonly Way[] =
    room.height > room.width ? [upright, above, beside] : [above, beside, upright];
  for (const wordings of picture === undefined ? [] : groups) {
    for (const cut of picture?.cuts === true ? [false, true] : [false]) {
      for (const wording of wordings) {
        for (const way of ways) {
          const found = picture === undefined ? undefined : way(wording, picture, room, cut);
          if (found !== undefined) return found;
        }
      }
    }
  }
  const alone = groups.flat().map((wording) => wording(room.width));
  const fitting = alone.find((block) => fits(block, room.width, room.height));
  const text = fitting ?? alone.at(-1);
  if (text === undefined) throw new Error("A slot has no words");
  const over = Math.max(text.width - room.width, text.height - room.height);
  return { text, textAt: [0, 0], ...(fitting === undefined ? { over } : {}) };
}

const fits = (text: TextBlock, width: number, height: number): boolean =>
  text.width <= width && text.height <= height;

function lengthFor(picture: SlotPicture, room: number, cut: boolean): number | undefined {
  if (picture.length <= room) return picture.length;
  return cut && room >= leastPicture ? room : undefined;
}

function above(
  wording: Wording,
  picture: SlotPicture,
  { width, height, spare: [left, right] = [0, 0] }: Room,
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
  { width, height }: Room,
  cut: boolean,
): SlotLayout | undefined {
  const words = wording(width);
  const share = cut
    ? width - Math.min(words.width, width * 0.6) - 2 * gap
    : width - leastText - 2 * gap;
  const length = lengthFor(picture, share, cut);
  if (length === undefined || picture.height(length) > height) return undefined;
  const text = wording(width - length - 2 * gap);
  if (!fits(text, width - length - 2 * gap, height)) return undefined;
  return {
    text,
    textAt: [0, 0],
    picture: { at: [width - length, height / 2], length, upright: false },
  };
}

function upright(
  wording: Wording,
  picture: SlotPicture,
  { width, height }: Room,
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
