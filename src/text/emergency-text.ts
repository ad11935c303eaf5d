/** The first thing said in an emergency: what to do now, whom to call and what ends it; in English, plus a line in four other languages. */

interface Emergency {
  /** Most urgent first. */
  readonly act: string;
  readonly call: string;
}

/** Works wherever the reader is. */
const NUMBER = 'your emergency number (911, 112 …)';
/** The US number: Health Resources and Services Administration, Poison Help line. */
const POISON = 'poison control (1-800-222-1222 in the US, your local number elsewhere)';

const TEXTS: Readonly<Record<string, Emergency>> = {
  gas: {
    act: 'Leave now, touch no switch, and call from outside.',
    call: `${NUMBER} or the gas company’s emergency line. Stay out until they let you back in.`,
  },
  'carbon-monoxide': {
    act: 'Get everybody out into fresh air now, pets too, and call from outside.',
    call: `${NUMBER}; say so if anybody feels sick. Nobody goes back in until the fire department or the gas company has measured the air.`,
  },
  fire: {
    act: 'Get everybody out, close doors behind you, and call from outside.',
    call: `${NUMBER}. Never go back in, and put no water on anything electrical.`,
  },
  electric: {
    act: 'Don’t touch it or anything wet near it. Switch off that circuit at the breaker panel if you can get there with dry feet; if it sparks or smokes, leave.',
    call: `a licensed electrician before it is switched on again. Somebody got a shock or still touches it: ${NUMBER}, and don’t touch them.`,
  },
  wound: {
    act: 'Press hard on the wound with a clean cloth and keep pressing. Leave in what is stuck in it.',
    call: `${NUMBER} if it spurts, is deep, won’t stop in 10 minutes, or a part is cut off. A doctor today for a deep, dirty or puncture wound (tetanus).`,
  },
  'wound eye': {
    act: 'Don’t rub. Rinse the open eye with clean water for 15 minutes or more. If something is stuck in the eye, don’t rinse or pull: cover it lightly.',
    call: `${NUMBER} or an eye doctor now; for cement, lime, stripper or glue keep rinsing until they take over.`,
  },
  'wound ill': {
    act: `Call ${NUMBER} now and stay with them. If it may be gas or fumes, get everybody out first.`,
    call: `${NUMBER}; the dispatcher will talk you through it until help comes.`,
  },
  'wound poison': {
    act: 'Don’t make them vomit. Wipe out the mouth, and keep the package at hand.',
    call: `${POISON} now, or ${NUMBER} if they are drowsy, can’t breathe well or can’t swallow; for a pet, a vet.`,
  },
  'wound breathed': {
    act: 'Get them out of the dust into fresh air now. Wipe nose and mouth, and wash face and hands.',
    call: `${NUMBER} if they can’t breathe well, turn blue or are drowsy; else ${POISON}, or a vet for a pet.`,
  },
  'wound heart': {
    act: `Call ${NUMBER} now: it may be the heart. Sit down, loosen tight clothes, and don’t drive. No more lifting, even if it eases.`,
    call: `${NUMBER}; ask the dispatcher about aspirin. If they collapse and don’t breathe normally: push hard and fast on the middle of the chest.`,
  },
  'wound heat': {
    act: `Call ${NUMBER} now: it may be heat stroke. Get them into the shade or a cool room and cool them fast: wet skin and a fan, or ice packs at the neck, armpits and groin. Nothing to drink if they are confused.`,
    call: `${NUMBER}; stay with them and keep cooling until help comes.`,
  },
  'wound back': {
    act: 'Stop all lifting. Numb legs, a numb groin or trouble with bladder or bowel after a strained back can be a pinched spinal nerve: go to an emergency room now, and let somebody else drive.',
    call: `${NUMBER} if the legs give way, after a fall, or if nobody can drive.`,
  },
  'wound bite': {
    act: 'Get away from it. Wash the bite with soap and water. A snake: keep still, keep the bite below the heart, take off rings; no cutting, sucking, ice or tight band.',
    call: `${NUMBER} at once for a snake bite, a swelling face or trouble with breathing; ${POISON} for any venom. A doctor today for a rat, bat or other animal (infection, tetanus, rabies).`,
  },
  'wound needle': {
    act: 'Wash it with soap and running water now; don’t squeeze or suck it. Leave the needle where it is, and keep others away.',
    call: `an emergency room or urgent care within hours, not days: medicine against HIV works only if it starts soon (within 72 hours); ${NUMBER} if the needle is still in, or anybody is drowsy.`,
  },
  'wound caustic': {
    act: 'Get the wet clothes, boots and gloves off, brush off dry powder, and rinse the skin with cool running water for 20 minutes or more. Wet cement burns deep before it hurts. No vinegar, no cream.',
    call: `${POISON} while it is rinsed; ${NUMBER} or an emergency room for blisters, skin gone white or raw, or a burn of hand, face or joint.`,
  },
  cleaners: {
    act: 'Leave the room now and get into fresh air. Add nothing to it, and don’t smell it.',
    call: `${POISON}, or ${NUMBER} if anybody coughs hard or can’t breathe well. Nobody goes in until it has aired out.`,
  },
  fumes: {
    act: 'Get out into fresh air now, and leave the doors open behind you.',
    call: `${NUMBER} if anybody is confused, drowsy, or can’t breathe well; else ${POISON}.`,
  },
  'fumes flame': {
    act: 'Stop, close the can, and get everybody out of that room: these vapors reach a flame along the floor. Touch no switch and light nothing.',
    call: `${NUMBER} from outside if it smells strong or anybody is dizzy. Before you go on, every flame and pilot light is off and two windows are open.`,
  },
  sewage: {
    act: 'Keep people and pets out, run no water and flush nothing. Switch off the power to that area if you can get to the panel with dry feet.',
    call: 'a licensed plumber for the drain and a professional water-damage restorer for the rest: what it soaked comes out.',
  },
  water: {
    act: 'Close the main water valve now. Switch off the power to that area if you can get to the panel with dry feet; stay out from under a sagging ceiling.',
    call: `a licensed plumber. ${NUMBER.charAt(0).toUpperCase()}${NUMBER.slice(1)} if water is at outlets or the panel. Then your insurer, before anything is thrown out.`,
  },
  structure: {
    act: 'Get everybody off that floor and out from under it, and put nothing more on it.',
    call: `a licensed contractor or a structural engineer today; ${NUMBER} if it still moves or somebody is hurt.`,
  },
  asbestos: {
    act: 'Stop now. Switch off the fan, AC or furnace, get everybody out of that dust, and close the door behind you. Don’t sweep or vacuum.',
    call: `an accredited asbestos inspector before anybody goes back in; ${NUMBER} if somebody can’t breathe well.`,
  },
  lead: {
    act: 'Stop now. Switch off the fan, AC or furnace, get children and pets out of that dust, and wash hands and faces. Don’t sweep or vacuum.',
    call: `the doctor for any child or pregnant woman who was in it (a blood test shows lead), or ${POISON}; ${NUMBER} if somebody can’t breathe well. A lead-safe certified contractor cleans it up.`,
  },
  silica: {
    act: 'Stop now and get everybody out of that dust into fresh air. Let it settle, and don’t dry-sweep it.',
    call: `${NUMBER} if somebody can’t breathe well; a doctor for a cough that stays. Go back only with water or a HEPA vacuum on the tool and a fitted respirator.`,
  },
};

/** One line each for people who don't read English: what to do, and the number. */
const LINES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  es: {
    gas: 'Salga ya, no toque ningún interruptor y llame desde fuera al número de emergencias (911, 112 …).',
    'carbon-monoxide': 'Salgan todos al aire libre ya y llame desde fuera al número de emergencias (911, 112 …).',
    fire: 'Salgan todos, cierre las puertas y llame desde fuera al número de emergencias (911, 112 …).',
    electric:
      'No toque nada allí; corte ese circuito en el tablero si puede llegar sin mojarse, y llame a un electricista; si hay un herido, al número de emergencias (911, 112 …).',
    wound:
      'Presione fuerte la herida con un paño limpio, no saque lo que esté clavado y llame al número de emergencias (911, 112 …).',
    'wound eye':
      'No se frote: enjuague el ojo abierto con agua limpia 15 minutos; si hay algo clavado, solo cúbralo. Llame al número de emergencias (911, 112 …).',
    'wound ill': 'Llame ya al número de emergencias (911, 112 …) y quédese con la persona.',
    cleaners: 'Salga ya al aire libre, no añada nada y llame al número de emergencias (911, 112 …).',
    fumes: 'Salga ya al aire libre, deje las puertas abiertas y llame al número de emergencias (911, 112 …).',
    sewage: 'No entre, no use agua ni desagües y llame a un plomero y a una empresa de limpieza de daños por agua.',
    water:
      'Cierre la llave principal del agua y llame a un plomero; si hay agua junto a la electricidad, al número de emergencias (911, 112 …).',
    structure: 'Salgan todos de ese piso y de debajo de él; llame al número de emergencias (911, 112 …).',
  },
  de: {
    gas: 'Sofort raus, keinen Schalter berühren, von draußen den Notruf wählen (112, 911 …).',
    'carbon-monoxide': 'Alle sofort an die frische Luft und von draußen den Notruf wählen (112, 911 …).',
    fire: 'Alle raus, Türen schließen, von draußen den Notruf wählen (112, 911 …).',
    electric:
      'Nichts anfassen, wenn trockenen Fußes möglich die Sicherung ausschalten, Elektriker rufen; bei Verletzten den Notruf wählen (112, 911 …).',
    wound: 'Fest mit einem sauberen Tuch auf die Wunde drücken, nichts herausziehen, den Notruf wählen (112, 911 …).',
    'wound eye':
      'Nicht reiben: das offene Auge 15 Minuten mit sauberem Wasser spülen; steckt etwas darin, nur abdecken. Notruf wählen (112, 911 …).',
    'wound ill': 'Sofort den Notruf wählen (112, 911 …) und dabeibleiben.',
    cleaners: 'Sofort an die frische Luft, nichts dazugeben, den Notruf wählen (112, 911 …).',
    fumes: 'Sofort an die frische Luft, Türen offen lassen, den Notruf wählen (112, 911 …).',
    sewage: 'Nicht betreten, kein Wasser laufen lassen; Klempner und Sanierungsfirma rufen.',
    water: 'Haupthahn zudrehen und den Klempner rufen; steht Wasser an Strom, den Notruf wählen (112, 911 …).',
    structure: 'Alle weg von diesem Boden und darunter heraus; den Notruf wählen (112, 911 …).',
  },
  fr: {
    gas: 'Sortez tout de suite, ne touchez à aucun interrupteur et appelez les urgences de dehors (112, 911 …).',
    'carbon-monoxide': 'Tout le monde dehors à l’air libre, puis appelez les urgences de dehors (112, 911 …).',
    fire: 'Tout le monde dehors, fermez les portes et appelez les urgences de dehors (112, 911 …).',
    electric:
      'Ne touchez à rien ; coupez ce circuit au tableau si vous pouvez y aller au sec, et appelez un électricien ; s’il y a un blessé, les urgences (112, 911 …).',
    wound:
      'Appuyez fort sur la plaie avec un linge propre, ne retirez pas ce qui est planté et appelez les urgences (112, 911 …).',
    'wound eye':
      'Ne frottez pas : rincez l’œil ouvert à l’eau claire 15 minutes ; si quelque chose y est planté, couvrez-le seulement. Appelez les urgences (112, 911 …).',
    'wound ill': 'Appelez tout de suite les urgences (112, 911 …) et restez auprès de la personne.',
    cleaners: 'Sortez tout de suite à l’air libre, n’ajoutez rien et appelez les urgences (112, 911 …).',
    fumes: 'Sortez tout de suite à l’air libre, laissez les portes ouvertes et appelez les urgences (112, 911 …).',
    sewage: 'N’entrez pas, n’utilisez pas d’eau ; appelez un plombier et une entreprise de remise en état.',
    water:
      'Fermez l’arrivée d’eau générale et appelez un plombier ; si l’eau touche l’électricité, les urgences (112, 911 …).',
    structure: 'Que tout le monde quitte ce plancher et le dessous ; appelez les urgences (112, 911 …).',
  },
  pt: {
    gas: 'Saia já, não toque em nenhum interruptor e ligue de fora para a emergência (911, 112 …).',
    'carbon-monoxide': 'Saiam todos já para o ar livre e ligue de fora para a emergência (911, 112 …).',
    fire: 'Saiam todos, feche as portas e ligue de fora para a emergência (911, 112 …).',
    electric:
      'Não toque em nada; desligue esse circuito no quadro se puder chegar lá sem se molhar e chame um eletricista; se houver feridos, a emergência (911, 112 …).',
    wound:
      'Pressione a ferida com força com um pano limpo, não retire o que estiver cravado e ligue para a emergência (911, 112 …).',
    'wound eye':
      'Não esfregue: lave o olho aberto com água limpa por 15 minutos; se houver algo cravado, apenas cubra. Ligue para a emergência (911, 112 …).',
    'wound ill': 'Ligue já para a emergência (911, 112 …) e fique com a pessoa.',
    cleaners: 'Saia já para o ar livre, não acrescente nada e ligue para a emergência (911, 112 …).',
    fumes: 'Saia já para o ar livre, deixe as portas abertas e ligue para a emergência (911, 112 …).',
    sewage: 'Não entre, não use água nem descarga; chame um encanador e uma empresa de limpeza de danos por água.',
    water:
      'Feche o registro geral de água e chame um encanador; se houver água junto da eletricidade, a emergência (911, 112 …).',
    structure: 'Saiam todos desse piso e de baixo dele; ligue para a emergência (911, 112 …).',
  },
};

/** Throws for a hazard without text: an emergency must never be silent. */
export function emergencyText(hazard: string, about: string | undefined): Emergency {
  const text = (about === undefined ? undefined : TEXTS[`${hazard} ${about}`]) ?? TEXTS[hazard];
  if (!text) throw new Error(`no words for the emergency ${hazard}`);
  return text;
}

/** Undefined for English. */
export function emergencyLine(language: string, hazard: string, about: string | undefined): string | undefined {
  const lines = LINES[language];
  return (about === undefined ? undefined : lines?.[`${hazard} ${about}`]) ?? lines?.[hazard];
}
