/** An SVG with a name and a description for those who cannot see it. 100 units are about 100 pixels on a phone. */
import type { ComponentChildren } from 'preact';

interface Props {
  readonly id: string;
  readonly title: string;
  /** What the picture shows, with its figures, in a sentence or two. */
  readonly description: string;
  readonly width?: number;
  readonly height: number;
  /** Printed under the picture. */
  readonly caption?: string;
  readonly children: ComponentChildren;
}

export function Picture({ id, title, description, width = 360, height, caption, children }: Props) {
  return (
    <figure class="calc-picture">
      <svg
        role="img"
        aria-labelledby={`${id}-title ${id}-desc`}
        viewBox={`0 0 ${width} ${height}`}
        width={width}
        height={height}
      >
        <title id={`${id}-title`}>{title}</title>
        <desc id={`${id}-desc`}>{description}</desc>
        {children}
      </svg>
      {caption && <figcaption>{caption}</figcaption>}
    </figure>
  );
}
