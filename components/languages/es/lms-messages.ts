import type { Catalogue } from '../../shared/catalogue.js';

export const lmsMessages: Catalogue = {
  'lms.none': 'Aquí no hay plataforma de aprendizaje: todo funciona, nada se comunica.',
  'lms.opening': 'Consultando a la plataforma de aprendizaje…',
  'lms.open': 'Los resultados se comunican a la plataforma de aprendizaje después de cada respuesta.',
  'lms.review': 'Abierto solo para ver: nada se comunica a la plataforma de aprendizaje.',
  'lms.refused': 'La plataforma de aprendizaje no abrió sesión: todo funciona, nada se comunica.',
  'lms.trouble': 'La plataforma de aprendizaje no aceptó el último informe. El siguiente lo lleva todo otra vez.',
  'lms.finished': 'La sesión con la plataforma de aprendizaje ha terminado. Abrir de nuevo la lección desde la plataforma para comunicar más.',
};
