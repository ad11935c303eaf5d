/** Emergencies in Spanish, German, French and Portuguese. Words are written without accents, matching folded text. */

import type { Hazard, Language } from '../hazard.ts';
import type { Lexicon, Rule } from '../tables.ts';

/** One language's words for each emergency. */
interface Tongue {
  readonly language: Language;
  readonly smell: string;
  readonly gas: string;
  readonly leak: string;
  readonly gasSure: string;
  readonly monoxide: string;
  readonly fire: string;
  readonly shock: string;
  readonly wire: string;
  readonly hit: string;
  readonly spark: string;
  readonly pipe: string;
  readonly burst: string;
  readonly water: string;
  readonly runs: string;
  readonly flood: string;
  readonly sewage: string;
  readonly toilet: string;
  readonly overflows: string;
  readonly bleeding: string;
  readonly cut: string;
  readonly body: string;
  readonly eye: string;
  readonly inEye: string;
  readonly unwell: string;
  readonly mixed: string;
  readonly bleach: string;
  readonly notBleach: string;
  readonly fumes: string;
  readonly dizzy: string;
  readonly heater: string;
  readonly falls: string;
  readonly floor: string;
}

const TONGUES: readonly Tongue[] = [
  {
    language: 'es',
    smell: 'huele huelo oler olor oliendo peste apesta',
    gas: 'gas butano propano',
    leak: 'fuga fugas escape escapa escapando fugando sale_gas',
    gasSure:
      'huele_a_gas olor_a_gas huelo_gas fuga_de_gas escape_de_gas huele_mucho_a_gas tuberia_de_gas tubo_de_gas linea_de_gas',
    monoxide: 'monoxido_de_carbono monoxido',
    fire: 'fuego incendio se_quema se_esta_quemando quemandose llamas humo incendiando huele_a_quemado en_llamas echa_humo sale_humo',
    shock:
      'me_electrocute electrocutado electrocuto electrocutarse calambre_electrico me_dio_corriente me_dio_toques descarga_electrica choque_electrico me_dio_la_corriente me_paso_corriente toque_electrico calambrazo',
    wire: 'cable cables alambre cableado enchufe tomacorriente contacto interruptor alambres toma',
    hit: 'corte cortado perfore perforado taladre taladrado atravese pinche rompi roto clave clavo toque danado dane golpee perforo cortamos',
    spark: 'chispas chispa chispea chispeando echa_chispas pelado pelados expuesto suelto',
    pipe: 'tuberia tuberias tubo tubos caneria caneria_de_agua canerias manguera llave_de_paso cano',
    burst:
      'rota roto revento reventado reventada reventaron rompio rompi rompimos estallo explotado perfore pinche gotea gotea_mucho goteando fuga perforamos rajo',
    water: 'agua',
    runs: 'sale saliendo chorro chorros chorrea inunda inundando inundado inundada brota brotando sube a_chorros por_todas_partes por_todos_lados no_para',
    flood: 'inundacion inundado inundada se_inunda se_esta_inundando inundando esta_inundado me_inundo se_inundo',
    sewage:
      'aguas_negras aguas_residuales agua_negra alcantarilla drenaje_se_desbordo aguas_servidas cloaca cloacas aguas_fecales',
    toilet: 'inodoro retrete escusado excusado bano drenaje desague poceta sanitario wc desagues',
    overflows:
      'desbordo desbordando desborda desbordado rebosa rebosando reboso se_tapo_y_salio derramo tapado_y_sale regresa_agua devolvio',
    bleeding:
      'sangrando sangra sangre_por mucha_sangre no_para_de_sangrar sangro desangra desangrando sangrado no_deja_de_sangrar',
    cut: 'enterre enterro enterrado clavo_en clave_en me_clave corte corto corte_en cortado cortada clave clavo clavado atraveso atravesado pille quemado queme lastime lastimado herido machaque',
    body: 'mano dedo dedos pulgar brazo pierna pie cara cabeza manos rodilla muneca pies',
    eye: 'ojo ojos',
    inEye:
      'me_entro entro me_cayo cayo polvo arde arden quema duele astilla salpico me_salto salto pegamento cal cemento',
    unwell:
      'se_desmayo desmayado desmayada inconsciente no_respira no_puedo_respirar dolor_de_pecho dolor_en_el_pecho infarto no_despierta se_cayo_de_la_escalera me_cai_de_la_escalera ambulancia convulsiones',
    mixed: 'mezcle mezclado mezclamos mezclo eche mezcla',
    bleach: 'cloro lejia blanqueador lavandina hipoclorito',
    notBleach: 'amoniaco orina acido vinagre muriatico orines',
    fumes: 'vapores vapor solvente disolvente thinner pegamento adhesivo gases quimico quimicos',
    dizzy: 'mareado mareada mareo mareos nauseas dolor_de_cabeza vomitando ahogo no_respiro',
    heater: 'calentador estufa brasero generador calefactor calefaccion caldera',
    falls: 'derrumba derrumbo derrumbando se_cae se_hunde hundio hundiendo colapso colapsa se_hundio',
    floor: 'piso suelo techo viga vigas pared escalera',
  },
  {
    language: 'de',
    smell: 'riecht rieche geruch stinkt riechen gestank',
    gas: 'gas erdgas propan nach_gas',
    leak: 'leck austritt tritt_aus stromt ausstromt undicht entweicht zischt',
    gasSure:
      'gasgeruch gasleck gasleitung_angebohrt gasleitung gasaustritt gasrohr gashahn_offen gasalarm gasleitungen',
    monoxide: 'kohlenmonoxid kohlenmonoxyd co_melder co_warner co_alarm_piept',
    fire: 'feuer es_brennt brennt rauch qualm flammen qualmt raucht verbrannt_riecht brandgeruch schwelt angebrannt steht_in_flammen rauchmelder',
    shock:
      'stromschlag stromschlage elektroschlag einen_gewischt stromstoss gewischt_bekommen unter_strom elektrischen_schlag schlag_bekommen',
    wire: 'kabel leitung stromkabel stromleitung steckdose steckdosen schalter draht drahte elektroleitung strom',
    hit: 'angebohrt durchgeschnitten durchtrennt zerschnitten getroffen angesagt durchgesagt reingebohrt gebohrt geschnitten beschadigt genagelt reingeschraubt erwischt angeschnitten durchbohrt verletzt',
    spark: 'funken funkt funkt_es blank freiliegend offen spruht knistert schmort',
    pipe: 'rohr rohre wasserrohr wasserleitung leitung schlauch heizungsrohr heizrohr abflussrohr ventil',
    burst:
      'geplatzt platzt gebrochen angebohrt undicht kaputt leckt getroffen gerissen tropft durchtrennt zerbrochen durchbohrt geborsten rohrbruch',
    water: 'wasser',
    runs: 'spritzt lauft schiesst strom stromt sprudelt uberall kommt_hoch kommt_raus tropft_von_der_decke flutet steht dringt',
    flood: 'rohrbruch wasserrohrbruch uberschwemmung uberschwemmt uberflutet geflutet unter_wasser',
    sewage: 'abwasser fakalien jauche gullywasser klowasser schmutzwasser',
    toilet: 'toilette klo wc abfluss kanal abflussrohr gully',
    overflows:
      'ubergelaufen uberlauft lauft_uber ruckstau hochgekommen kommt_hoch druckt_hoch verstopft_und_lauft kommt_zuruck ubergeschwappt',
    bleeding: 'blutet blute bluten stark_blutend viel_blut hort_nicht_auf_zu_bluten blutung verblute blutend',
    cut: 'geschnitten abgeschnitten gesagt genagelt gequetscht verbrannt durch gerammt eingeklemmt aufgeschnitten verletzt gestochen getreten gebohrt geschossen abgetrennt',
    body: 'hand finger daumen arm bein fuss kopf gesicht knie fingerkuppe handgelenk zeh',
    eye: 'auge augen',
    inEye: 'bekommen staub brennt brennen splitter gespritzt geflogen kleber zement ins',
    unwell:
      'bewusstlos ohnmachtig atmet_nicht keine_luft brustschmerzen herzinfarkt von_der_leiter_gefallen leiter_gefallen schlaganfall notarzt umgekippt krampfanfall bekomme_keine_luft krankenwagen',
    mixed: 'gemischt vermischt zusammengekippt geschuttet gekippt mische',
    bleach: 'chlorreiniger bleiche chlor chlorbleiche bleichmittel',
    notBleach: 'ammoniak urin essig saure salzsaure salmiak essigreiniger',
    fumes: 'dampfe losungsmittel kleber verdunner losemittel klebstoff dampf',
    dizzy: 'schwindelig schwindlig ubel kopfschmerzen ubelkeit benommen schwindel',
    heater: 'heizgerat generator gasheizer heizlufter ofen therme gasheizung heizstrahler notstromaggregat',
    falls: 'bricht_ein sturzt_ein eingebrochen eingesturzt gibt_nach bricht_zusammen zusammengebrochen',
    floor: 'boden decke balken treppe wand fussboden',
  },
  {
    language: 'fr',
    smell: 'sent odeur sens pue senteur',
    gas: 'gaz butane propane le_gaz',
    leak: 'fuite fuites fuit echappe siffle s_echappe',
    gasSure: 'odeur_de_gaz fuite_de_gaz sent_le_gaz sens_le_gaz conduite_de_gaz tuyau_de_gaz sent_du_gaz',
    monoxide: 'monoxyde_de_carbone monoxyde',
    fire: 'incendie au_feu prend_feu a_pris_feu en_feu brule_dans ca_brule fumee flammes sent_le_brule feu_dans il_y_a_le_feu en_flammes fume_et',
    shock:
      'electrocute electrocutee electrocution choc_electrique decharge_electrique pris_le_courant pris_une_decharge chataigne pris_le_jus prend_le_courant pris_du_courant coup_de_jus',
    wire: 'fil fils cable cables prise prises interrupteur gaine electrique courant',
    hit: 'coupe sectionne perce touche arrache visse cloue traverse entaille endommage coupee',
    spark: 'etincelle etincelles denude denudes a_nu gresille arc',
    pipe: 'tuyau tuyaux conduite canalisation robinet flexible tuyauterie canalisations durite',
    burst: 'eclate eclatee casse cassee perce percee creve crevee rompu rompue fuit fuite explose fissure pete',
    water: 'eau l_eau leau deau',
    runs: 'coule jaillit gicle partout inonde sort monte jaillir gicler deborde ne_s_arrete_pas ruisselle',
    flood: 'inondation inonde inondee degat_des_eaux innonde innondation inondes',
    sewage: 'eaux_usees egout egouts eau_usee eaux_noires eaux_vannes refoulement_egout fosse_septique',
    toilet: 'toilettes toilette wc egout egouts evacuation cuvette canalisation',
    overflows: 'deborde debordent refoule refoulent remonte remontent debordement a_deborde debordees',
    bleeding: 'saigne saignement beaucoup_de_sang ca_saigne perd_du_sang plein_de_sang saigner hemorragie',
    cut: 'coupe coupee entaille plante plantee perce clou brule brulee ecrase ecrasee traverse tranche enfonce coince',
    body: 'main doigt doigts pouce bras jambe pied tete visage genou poignet mains orteil',
    eye: 'oeil yeux',
    inEye: 'rentre entre lame recu dans poussiere brule brulent pique eclat colle projection ciment gicle',
    unwell:
      'evanoui evanouie inconscient inconsciente ne_respire_plus ne_respire_pas douleur_a_la_poitrine douleur_dans_la_poitrine crise_cardiaque tombe_de_l_echelle tombe_d_une_echelle tombe_de_lechelle tombee_de_lechelle malaise ambulance samu perdu_connaissance tombe_dune_echelle arrive_pas_a_respirer',
    mixed: 'melange melangee verse mis',
    bleach: 'javel eau_de_javel chlore',
    notBleach: 'ammoniaque urine vinaigre acide detartrant ammoniac',
    fumes: 'vapeurs vapeur solvant solvants colle diluant emanations decapant',
    dizzy: 'vertige vertiges nausee nausees mal_a_la_tete tourne etourdi etourdie vomis mal_de_tete la_tete_qui_tourne',
    heater: 'chauffage groupe_electrogene brasero poele chaudiere generateur radiateur_a_gaz',
    falls: 's_effondre effondre effondrement s_ecroule ecroule ecroulement cede affaisse seffondre secroule',
    floor: 'plancher sol plafond poutre escalier mur',
  },
  {
    language: 'pt',
    smell: 'cheiro cheira cheirando fedor sinto',
    gas: 'gas gas_de_cozinha butano propano',
    leak: 'vazamento vazando vaza fuga escapando escape fugas',
    gasSure:
      'cheiro_de_gas cheiro_a_gas cheira_a_gas vazamento_de_gas fuga_de_gas cheirando_gas cheirando_a_gas cano_de_gas tubo_de_gas cheiro_forte_de_gas',
    monoxide: 'monoxido_de_carbono monoxido',
    fire: 'fogo incendio pegando_fogo pegou_fogo fumaca fumo queimando cheiro_de_queimado chamas em_chamas cheiro_a_queimado a_arder ardendo',
    shock:
      'choque_eletrico levei_um_choque levei_choque tomei_um_choque tomei_choque eletrocutado apanhei_um_choque eletrocutada deu_choque dando_choque eletrocutou',
    wire: 'fio fios cabo cabos tomada tomadas interruptor fiacao',
    hit: 'cortei furei perfurei acertei rompi parti danifiquei pregou cortado preguei bati atravessei parafusei atingi',
    spark: 'faisca faiscas faiscando desencapado desencapados exposto exposta solto',
    pipe: 'cano canos tubo tubulacao torneira encanamento mangueira tubos registro canalizacao',
    burst:
      'estourou estourado rebentou rebentado furei furou quebrou quebrei rompeu partiu vazando rachou perfurei pinga furado partido pingando arrebentou',
    water: 'agua',
    runs: 'jorrando jorra saindo alagando esguichando por_todo_lado espirrando subindo inundando a_jorrar a_sair jorra_agua nao_para escorrendo',
    flood: 'inundacao inundado inundada alagado alagada alagando alagamento inundou alagou',
    sewage: 'esgoto aguas_negras agua_do_esgoto fossa aguas_residuais',
    toilet: 'vaso_sanitario privada sanita vaso ralo esgoto banheiro retrete',
    overflows: 'transbordou transbordando transborda voltou voltando entupiu_e subindo refluxo a_transbordar',
    bleeding: 'sangrando sangra muito_sangue nao_para_de_sangrar sangramento a_sangrar sangue_nao_para',
    cut: 'cortei cortou corte preguei furei prego queimei esmaguei atravessou cortado machuquei espetei perfurei',
    body: 'mao dedo dedos polegar braco perna pe cabeca rosto joelho maos pulso',
    eye: 'olho olhos',
    inEye: 'caiu entrou po ardendo arde queima lasca espirrou cola cimento poeira nos no',
    unwell:
      'desmaiou desmaiado desmaiada inconsciente nao_respira nao_consigo_respirar dor_no_peito ataque_cardiaco caiu_da_escada cai_da_escada infarto ambulancia enfarte convulsao falta_de_ar',
    mixed: 'misturei misturou misturado mistura joguei',
    bleach: 'agua_sanitaria cloro lixivia candida hipoclorito',
    notBleach: 'amonia amoniaco urina acido vinagre xixi muriatico',
    fumes: 'vapores vapor solvente thinner cola tiner diluente quimico gases',
    dizzy: 'tonto tonta tontura tonturas nausea enjoo dor_de_cabeca vomitando enjoado tonturas zonzo',
    heater: 'aquecedor gerador braseiro caldeira esquentador fogareiro',
    falls: 'desabou desabando desaba cedeu cedendo afundou afundando colapso desmoronou',
    floor: 'piso chao teto viga escada parede assoalho',
  },
];

/** The lexicons of one language. Class names include its name, so that languages don't mix. */
function lexiconsOf(tongue: Tongue): readonly Lexicon[] {
  const { language } = tongue;
  const name = (word: string): string => `${language.toUpperCase()}_${word}`;
  const classes = Object.fromEntries(
    Object.entries(tongue).flatMap(([word, text]) => (word === 'language' ? [] : [[name(word), text]])),
  ) as Record<string, string>;
  const rule = (needs: string, within = 7, unless?: string): Rule => ({
    level: 'emergency',
    needs: needs.split(' ').map(name).join(' '),
    within,
    ...(unless === undefined ? {} : { unless }),
  });
  const about = (one: Rule, said: string): Rule => ({ ...one, about: said });
  const hazards: readonly (readonly [Hazard, readonly Rule[]])[] = [
    ['gas', [rule('gasSure'), rule('smell gas', 4), rule('leak gas', 5)]],
    ['carbon-monoxide', [rule('monoxide'), rule('heater dizzy', 20)]],
    ['fire', [rule('fire')]],
    ['electric', [rule('shock'), rule('hit wire', 6), rule('spark wire', 6)]],
    [
      'wound',
      [rule('bleeding'), rule('cut body', 11), about(rule('eye inEye', 9), 'eye'), about(rule('unwell'), 'ill')],
    ],
    ['cleaners', [rule('bleach notBleach', 10)]],
    ['water', [rule('pipe burst', 6), rule('water runs', 5), rule('flood')]],
    ['sewage', [rule('sewage'), rule('toilet overflows', 6)]],
    ['fumes', [rule('fumes dizzy', 12)]],
    ['structure', [rule('floor falls', 6)]],
  ];
  return hazards.map(([hazard, rules], i): Lexicon => ({ hazard, language, classes: i === 0 ? classes : {}, rules }));
}

export const LANGUAGES: readonly Lexicon[] = TONGUES.flatMap(lexiconsOf);
