/** Why a run ends: 1 content refused, 2 usage, 3 environment, 4 another build runs, 5 verification failed. */
export type ExitCode = 1 | 2 | 3 | 4 | 5;

/** A foreseen end of a run: what happened, and what the user can do about it. */
export class Stop extends Error {
  readonly exit: ExitCode;
  readonly fix: string;
  constructor(exit: ExitCode, message: string, fix: string) {
    super(message);
    this.name = "Stop";
    this.exit = exit;
    this.fix = fix;
  }
}
