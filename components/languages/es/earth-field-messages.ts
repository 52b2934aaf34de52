import type { Catalogue } from '../../shared/catalogue.js';

export const earthFieldMessages: Catalogue = {
  'earth.elements': 'El campo terrestre aquí',
  'earth.element': 'elemento',
  'earth.value': 'valor',
  'earth.sigma': '1 sigma',
  'earth.change': 'al año',
  'earth.variation': 'Declinación magnética',
  'earth.inclination': 'Inclinación I, + abajo',
  'earth.h': 'Horizontal H',
  'earth.z': 'Vertical Z, + abajo',
  'earth.f': 'Total F',
  'earth.none': 'ninguna',
  'earth.sigma.note': 'Una desviación típica de lo que se puede encontrar en la mar: la incertidumbre propia del modelo, las rocas del fondo y días tranquilos; sin contar tormentas magnéticas ni pecios.',
  'earth.outside': 'Los modelos magnéticos valen del {from} al {until}, ambos incluidos: ninguno da el campo en esta fecha.',
  'earth.outside.model': '{model} vale del {from} al {until}, ambos incluidos: no da el campo en esta fecha.',
  'earth.outside.take': 'Tomar el 1 de enero de {year}',
  'caution.dip-pole': 'El campo es aquí vertical: ninguna dirección es el norte magnético y no hay declinación magnética.',
  'caution.geographic-pole': 'En el polo, la declinación magnética se cuenta desde el meridiano de {longitude}: con cualquier otro es distinta.',
};
