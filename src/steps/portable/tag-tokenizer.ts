/** parse5's reader of signs, told to listen to tags alone. */
import { Tokenizer, type Token, type TokenizerOptions } from 'parse5';

const nothing = () => undefined;

export interface TagTokens {
  readonly onStartTag: (token: Token.TagToken) => void;
  readonly onEndTag?: (token: Token.TagToken) => void;
}

export function tagTokenizer(options: TokenizerOptions, { onStartTag, onEndTag = nothing }: TagTokens): Tokenizer {
  return new Tokenizer(options, {
    onStartTag,
    onEndTag,
    onComment: nothing,
    onDoctype: nothing,
    onEof: nothing,
    onCharacter: nothing,
    onNullCharacter: nothing,
    onWhitespaceCharacter: nothing,
  });
}
