// The browser is found or fetched by lib/setup, never by an install script.
module.exports = { skipDownload: true };
