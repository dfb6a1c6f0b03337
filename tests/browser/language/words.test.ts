/** How words are read and compared. Expected pairs are everyday English and Spanish, checked by eye. */
import { describe, expect, it } from 'vitest';
import { editDistance } from '../../../src/browser/language/distance.ts';
import { plainly } from '../../../src/browser/language/sayings.ts';
import { stem } from '../../../src/browser/language/stem.ts';
import { carrying } from '../../../src/browser/language/stop-words.ts';
import { fold, wordsOf } from '../../../src/browser/language/words-of.ts';
import { speechOf } from '../../../src/words/lang.ts';

describe('words of a text', () => {
  it.each([
    ['350mm', ['350', 'mm']],
    ['14" blade', ['14', 'in', 'blade']],
    ['14 inch', ['14', 'in']],
    ['14-inch', ['14', 'in']],
    ['25x52x15', ['25', 'x', '52', 'x', '15']],
    ['50 to 1', ['50:1']],
    ['50 a 1', ['50:1']],
    ['5 liters', ['5', 'l']],
    ['5 litros', ['5', 'l']],
    ['80 m/s', ['80', 'm/s']],
    ["won't", ['wont']],
    ['won’t', ['wont']],
    ['hormigón', ['hormigon']],
    ['M8 8.8', ['m8', '8.8']],
    ['3/16', ['3/16']],
    ['', []],
  ])('%s', (text, words) => {
    const speech = speechOf(/litros| a /.test(text) ? 'es' : 'en');
    expect(wordsOf(text, speech)).toEqual(words);
  });
});

describe('families', () => {
  it.each([
    ['en', ['slip', 'slips', 'slipped', 'slipping']],
    ['en', ['vibrate', 'vibrates', 'vibrating', 'vibration']],
    ['en', ['wont', 'doesnt', 'no', 'not', 'cannot']],
    ['en', ['break', 'broke', 'broken']],
    ['en', ['bearing', 'bearings']],
    ['en', ['battery', 'batteries']],
    ['es', ['arrancar', 'arranca', 'arranque']],
    ['es', ['rodamiento', 'rodamientos']],
    ['es', ['sin', 'no']],
    ['es', ['disco', 'discos']],
    ['es', ['arrancar', 'arrancarla', 'arrancándola'].map((word) => fold(word))],
    // What means the same to a shop: British and American, Mexico and the River Plate.
    ['en', ['blade', 'disc', 'disks']],
    ['en', ['gasoline', 'gas', 'petrol']],
    ['en', ['idle', 'tickover']],
    ['en', ['break', 'snapped', 'torn']],
    ['es', ['correa', 'banda', 'faja']],
    ['es', ['cuerda', 'piola', 'jalon']],
    ['es', ['rodamiento', 'balero', 'rulemanes']],
    ['es', ['arrancar', 'prende', 'enciende']],
  ] as const)('%s %s', (lang, words) => {
    expect(new Set(words.map((word) => stem(word, speechOf(lang)))).size).toBe(1);
  });

  it.each([
    ['en', 'speed', 'spell'],
    ['en', 'tension', 'tent'],
    ['en', 'pull', 'pulley'],
    ['en', 'blade', 'blood'],
  ] as const)('%s keeps %s and %s apart', (lang, a, b) => {
    expect(stem(a, speechOf(lang))).not.toBe(stem(b, speechOf(lang)));
  });
});

describe('words a question stands on', () => {
  it.each([
    ['how do I clean the saw', ['clean']],
    ['my saw', ['saw']],
    ['the cord is stuck', ['cord', 'stuck']],
    ['14 in blade', ['14', 'in', 'blade']],
    ['what is it', ['what', 'is', 'it']],
  ])('%s', (text, words) => expect(carrying(wordsOf(text, speechOf('en')), speechOf('en'))).toEqual(words));
});

describe('what takes several words to say', () => {
  it.each([
    ['wont fire up', 'en', 'wont start'],
    ['kill switch', 'en', 'stop switch'],
    ['it cuts out', 'en', 'it dies'],
    ['no jala', 'es', 'no arranca'],
    ['toma de agua', 'es', 'llave de agua'],
    ['it refuses to start', 'en', 'it wont start'],
    ['hardly any water', 'en', 'no water'],
    ['fuel running out of the exhaust', 'en', 'fuel leaks from the exhaust'],
    ['it ran out of gas', 'en', 'it ran out of gas'],
    ['gas has been sitting in the tank since spring', 'en', 'gas has old spring'],
    ['hours left on it', 'en', 'life on it'],
    ['se niega a arrancar', 'es', 'no arrancar'],
    ['la cuerda no entra de vuelta', 'es', 'la cuerda no regresa'],
    ['gasolina que lleva meses', 'es', 'gasolina que vieja'],
  ] as const)('%s', (said, lang, meant) => expect(plainly(said, speechOf(lang))).toBe(meant));

  it.each([
    ['chop saw is dead', 'is dead'],
    ['chop saw', 'chop saw'],
    ['floor saw is dead', 'floor saw is dead'],
  ])('"%s": the machine’s name goes while other words remain', (said, left) =>
    expect(plainly(said, speechOf('en')).trim()).toBe(left),
  );
});

describe('letters between two words', () => {
  // Counted by hand: a swap of neighbors is one step.
  it.each([
    ['tension', 'tesnion', 1],
    ['silica', 'silca', 1],
    ['polvo', 'polbo', 1],
    ['carburetor', 'carburator', 1],
    ['same', 'same', 0],
    ['kitten', 'sitting', 3],
    ['', 'abc', 3],
  ])('%s %s', (a, b, steps) => {
    expect(editDistance(a, b, 9)).toBe(steps);
    expect(editDistance(b, a, 9)).toBe(steps);
  });

  it('stops counting at the limit', () => {
    expect(editDistance('kitten', 'sitting', 2)).toBe(2);
    expect(editDistance('a', 'abcdefgh', 3)).toBe(3);
  });
});
