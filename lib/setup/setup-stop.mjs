/** A foreseen end of setting up: what is missing on this computer and what to do about it; `exit` is the exit code. */
export class SetupStop extends Error {
  /**
   * @param {string} message
   * @param {number} [exit]
   */
  constructor(message, exit = 3) {
    super(message);
    this.name = "SetupStop";
    this.exit = exit;
  }
}
