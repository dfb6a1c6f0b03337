/** Stylesheets name fonts and pictures from the top ("/_astro/x.woff2"); from a folder only relative names work. */
import { fileFor, relativePath, type FileSet } from './site-paths.ts';

export function relativeCss(file: string, css: string, files: FileSet): string {
  return css.replace(/url\(\s*(["']?)(\/[^/"')][^"')]*)\1\s*\)/g, (whole, _quote: string, address: string) => {
    const [path = ''] = address.split(/[?#]/);
    const target = fileFor(path, files);
    if (target === undefined) throw new Error(`${file} uses ${address}, and no such file was built.`);
    return whole.replace(address, relativePath(file, target));
  });
}
