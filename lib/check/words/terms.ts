import { phrase } from "./phrase.ts";

type Term = readonly [avoid: string, say: string];

/** Words that mean two things or belong to one house, by language, each with the neutral term. */
const terms: Readonly<Record<string, readonly Term[]>> = {
  en: [
    ["non locking screw|screws", "plain-head screw"],
    ["polyaxial", "multi-direction, within a stated cone"],
    ["star shaped|drive", "hexalobular drive"],
    ["measuring device|instrument", "depth gauge"],
    ["torque screwdriver|wrench", "torque-limiting handle"],
    ["double guide", "double-ended guide"],
    ["universal", "what it fits, by number"],
    ["recall|recalled|recalls", "withdrawal of a card"],
    ["right|correct|proper size", "the number with its noun"],
    ["long|longer|short|shorter screw|drill|plate", "the length in mm"],
    ["top|bottom hole|end", "proximal or distal"],
    ["top|bottom of the plate", "proximal or distal end, or face up"],
  ],
  de: [
    ["nicht verriegelnde|verriegelnden schraube|schrauben", "Schraube mit glattem Kopf"],
    ["polyaxial*", "in mehreren Richtungen, im angegebenen Kegel"],
    ["sternantrieb", "Innensechsrund"],
    ["universal*", "wozu es passt, mit der Zahl"],
    ["rückruf|rückrufe", "Rücknahme der Karte"],
    ["richtige|passende größe", "die Zahl mit ihrem Hauptwort"],
    ["lange|längere|kurze|kürzere schraube|platte", "die Länge in mm"],
    ["langer|längerer|kurzer|kürzerer bohrer", "die Länge in mm"],
    ["oberes|unteres loch|ende", "proximal oder distal"],
  ],
  fr: [
    ["vis non verrouillée|verrouillées", "vis à tête lisse"],
    ["polyaxial*", "multidirectionnel, dans le cône indiqué"],
    ["empreinte étoile", "empreinte à six lobes"],
    ["universel|universelle|universels|universelles", "ce à quoi cela va, avec le nombre"],
    ["rappel de|du produit", "retrait de la carte"],
    ["bonne taille", "le nombre avec son nom"],
    ["vis longue|courte", "la longueur en mm"],
    ["trou supérieur|inférieur", "proximal ou distal"],
  ],
  es: [
    ["tornillo|tornillos no bloqueado|bloqueados", "tornillo de cabeza lisa"],
    ["poliaxial*", "multidireccional, dentro del cono indicado"],
    ["impulsión estrella", "impulsión hexalobular"],
    ["universal|universales", "a qué se ajusta, con el número"],
    ["retirada del producto|mercado", "retirada de la tarjeta"],
    ["tamaño correcto|adecuado", "el número con su nombre"],
    ["tornillo largo|corto", "la longitud en mm"],
    ["orificio superior|inferior", "proximal o distal"],
  ],
};

const neutral = Object.values(terms)
  .flat()
  .map(([avoid, say]) => ({ pattern: phrase(avoid), say }));
const any = new RegExp(neutral.map(({ pattern }) => pattern.source).join("|"), "iu");

/** Looks in a text for the first words that have a neutral term, in any of the languages or among a publisher's own; finds undefined
 * where none do. */
export function termFinder(
  own: readonly { readonly word: string; readonly say: string }[],
): (text: string) => { readonly got: string; readonly say: string } | undefined {
  const mine = own.map(({ word, say }) => ({ pattern: phrase(word), say }));
  return (text) => {
    for (const { pattern, say } of any.test(text) ? [...mine, ...neutral] : mine) {
      const found = pattern.exec(text);
      if (found) return { got: found[0], say };
    }
    return undefined;
  };
}
