/** The paper a customer takes home. */
import type { customerPaper as en } from '../en/sheet.ts';

export const customerPaper: typeof en = {
  title: 'Reparación',
  ticket: 'Orden',
  machine: 'Máquina',
  customer: 'Cliente',
  takenIn: 'Recibida',
  handedBack: 'Entregada',
  said: 'Lo que nos contó',
  found: 'Lo que encontramos',
  done: 'Lo que hicimos',
  parts: 'Repuestos puestos',
  checks: 'Revisado antes de entregarla',
  checkNames: {
    guard: 'Protector y tapas en su lugar',
    stops: 'Se para con el interruptor',
    idle: 'El disco está quieto en ralentí',
    blade: 'El disco es el correcto y gira derecho',
    water: 'Sale agua por los dos lados',
    tight: 'No pierde combustible',
  },
  caution: 'Antes de cortar',
  orders: [
    'Lea el manual de la máquina; vale más que este papel.',
    'Mire el disco y el protector. No corte con un disco agrietado ni con el protector abierto.',
    'Agua abierta, mascarilla, gafas y protección para los oídos puestas.',
  ],
  stop: (phone) => `Si algo no está bien, pare y llámenos: ${phone}.`,
  signature: 'Firma',
};
