import type { Catalogue } from '../../shared/catalogue.js';

export const lmsMessages: Catalogue = {
  'lms.none': 'Pas de plateforme d’apprentissage ici : tout fonctionne, rien n’est transmis.',
  'lms.opening': 'Appel à la plateforme d’apprentissage…',
  'lms.open': 'Les résultats sont transmis à la plateforme d’apprentissage après chaque réponse.',
  'lms.review': 'Ouvert pour consultation : rien n’est transmis à la plateforme d’apprentissage.',
  'lms.refused': 'La plateforme d’apprentissage n’a pas ouvert de session : tout fonctionne, rien n’est transmis.',
  'lms.trouble': 'La plateforme d’apprentissage n’a pas pris le dernier rapport. Le suivant emporte tout de nouveau.',
  'lms.finished': 'La session avec la plateforme d’apprentissage est terminée. Rouvrir la leçon depuis la plateforme pour transmettre davantage.',
};
