import { describe, expect, it } from "vitest";
import { diskFault } from "../../lib/publish/disk-fault.ts";

const failed = (code: string) => Object.assign(new Error("write"), { code });

describe("an error of the disk", () => {
  it.each([
    ["a full disk", "ENOSPC", /dist could not be written: the disk is full/],
    ["a disk that can only be read", "EROFS", /can only be read/],
    ["a file that would be too large", "EFBIG", /may not be that large/],
  ])("%s stops with 3 and says what to do", (_, code, says) => {
    const stop = diskFault(failed(code), "dist");
    expect(stop?.exit).toBe(3);
    expect(stop?.message).toMatch(says);
  });

  it.each([
    ["an error of our own", new Error("x")],
    ["a file that is missing", failed("ENOENT")],
  ])("%s is not one", (_, error) => {
    expect(diskFault(error, "dist")).toBeUndefined();
  });
});
