/** Signal words, and how a source was seen. */
export const level = { danger: 'Peligro', warning: 'Advertencia', caution: 'Precaución', notice: 'Aviso' };

export const how = {
  read: 'leído en la fuente',
  quoted: 'leído en otra obra que lo cita',
  memory: 'de memoria, sin comprobar',
  'common-practice': 'práctica común, sin fuente',
  arithmetic: 'aritmética',
};
