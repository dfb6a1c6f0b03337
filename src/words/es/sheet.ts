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
    guard: 'Guarda y tapas en su lugar',
    stops: 'Se apaga con el interruptor',
    idle: 'El disco está quieto en ralentí',
    blade: 'El disco es el correcto y gira derecho',
    water: 'Sale agua por los dos lados',
    tight: 'No pierde combustible',
  },
  caution: 'Antes de cortar',
  orders: [
    'Lea el manual de la máquina; vale más que este papel.',
    'Mire el disco y la guarda. No corte con un disco rajado ni con la guarda abierta.',
    'Agua abierta; mascarilla, lentes y protectores auditivos puestos.',
  ],
  stop: (phone) => `Si algo no está bien, pare y llámenos: ${phone}.`,
  signature: 'Firma',
};
