/**
 * The one Content-Security-Policy of every page. It can be this short because no script or style
 * stays inline; the wasm word is what the search engine needs. 'self' also matches the files
 * beside a page opened from disk.
 */
export const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "img-src 'self' data:",
  'font-src data:',
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

export const policyTag = `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
