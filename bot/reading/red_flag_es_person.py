"""Spanish for the wide net: the whole person, distress, nights, and old or grave illness."""

PERSON = {
    "wide_bladder": """
        (me |se me )?(he |hice |hago |haga |hecho |escapa |escapo |escapado )(el )?(pis|pipi|caca|
        orina)~
        (me )?(he )?(hecho|hice|hago) (pis |caca |todo |pipi )?encima
        me (meo|mee|meaba|orino|orine|cago|cague|meado) (encima|en la cama|sin (querer|
        darme cuenta|notar*))
        no (llegue|llego|he llegado|me dio tiempo) (a llegar )?al (bano|vater|aseo|servicio|wc)
        ni (lo|me) (note|senti|di cuenta|entere)~(pis|orin*|mear|bano)
        no (controlo|control*|aguanto|retengo|siento|noto|puedo controlar|puedo aguantar|
        puedo retener)~(pis|
        orina|vejiga|esfinter*|ganas de (orinar|mear|ir)|caca|intestino*)
        incontinen*; (perd*|pierdo|falta de) (el )?control~(esfinter*|vejiga|orina|intestino*|pis)
        (escap*|perdida*) (el |de |la |un poco de )?(orina|pis|caca|heces|pipi)
        no (puedo|consigo|logro|soy capaz de) (orinar|mear|hacer pis|vaciar|hacer pipi)
        (entumec*|dormid*|hormigue*|no siento|no noto|acorchad*|insensib*|adormec*)~(ingle*|
        entrepierna|
        genital*|culo|perine|partes (bajas|intimas)|nalga*|silla de montar|ano)
        (entrepierna|genital*|ingle*|perine|partes (bajas|intimas)|nalga*)~(dormid*|entumec*|
        hormigue*|
        acorchad*|insensib*|adormec*|no (la|lo|las|los) siento)
    """,
    "wide_bladder_figure": """
        (risa|reir|carcajada*|jaja*|miedo|susto|gusto|emocion); casi me (meo|cago|mee|cague)
        me (meo|cago) (de|en (la|el|tu|todo|los|diez)|con); que me meo
    """,
    "wide_pregnant": """
        embaraz*; prenad*; matrona; gestac*; gestante; espero (un )?(bebe|nin*); trimestre
        (de|estoy de|con) ([0-9]+|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|doce|quince|
        veinte) (semanas|meses); en estado (de buena|interesante)*
    """,
    "wide_bleed": "sangr*; manch*; hemorrag*; coagul*; perdida* (de sangre|vaginal*)",
    "wide_bleed_figure": """
        nariz; encia*; corte; herida; rodilla; dedo; analisis; analitica; regla el ano pasado
    """,
    "wide_overdose": """
        (dobl*|tripl*)~(pastilla*|medic*|dosis|insulina|comprimid*); (pastilla*|medic*|insulina|
        comprimid*)~(doble|triple|de mas|de sobra)
        sobredosis; me (he )?(pasado|pase) (con|de|mucho con) (las |la |los |el )?(pastillas|
        medic*|insulina|dosis|
        ibuprofeno*|paracetamol*|analgesic*|calmante*)
        (tom*|trag*|meti|metido|engull*|ingeri*)~~(demasiad*|monton de|much(as|os|isimas|isimos)|
        toda la|toda una|
        todo el|todo un|todas (las|mis)|todos (los|mis)|[1-9][0-9]|bote|caja|blister|punado|doble|
        triple|
        mas de la cuenta|mas de lo|entero|entera|diez|doce|quince|veinte|treinta|cuarenta|
        tira)~(pastilla*|paracetamol*|ibuprofeno*|
        medic*|comprimid*|insulina|somnifer*|ansiolitic*|antidepresiv*|caja|bote|capsula*|dosis|
        relajante*|pildora*|blister|analgesic*|orfidal*|diazepam*|trankimazin*|calmante*|nolotil*|
        cafeina)
        (tom*|trag*)~~(de la cuenta|de lo debido|mas de lo que|de mas); doble dosis; triple dosis
        dosis doble; (intoxic*|envenen*)~(medic*|pastilla*)
        el bote entero; la caja entera; el blister entero
    """,
    "wide_overdose_figure": """
        sobredosis de (azucar|chocolate|cafe|burpees|turron|series|dominadas|trabajo|
        carbohidratos|planchas|
        comida|dulces|flexiones|sol|fondos|pizza|tarta)
        agua; dosis (doble|triple) de (cafe|burpees|planchas|series|paciencia)
    """,
    "wide_self_harm": """
        no (creo que |se si )?(quier(o|a))~(despert*|vivir|seguir viv*)
        (estrellar*|tirar*|lanzar*|saltar)~(con el coche|del puente|por el (balcon|puente)|
        por la ventana|contra un (arbol|muro)|al (tren|metro|vacio))
        (pienso|pensado|pensando)~(estrellarme|tirarme|ahorcarme|matarme|acabar con|saltar)
        (seria |estaria )?mejor no (estar|existir|vivir|haber nacido|despertar)
        dormirme y no despertar; suicidar*; suicidio*; suicido; (soy|ideas|pensamientos|ideacion|
        tendencias|muy) suicida*; matarme(?! a ); quitarme (la vida|de en medio|del medio)
        pegarme un tiro; ahorcarme
        (quiero|queria|querria|ganas de|deseo|deseando|ojala|prefiero|preferiria|quisiera|
        pienso en|pensando en|
        pensado en|pensamientos de|gustaria|mejor)~(morir*|desaparecer|no despertar*|no existir|
        dejar de existir|muert(o|a)|
        no estar aqui|dormirme y no)
        ojala no (me )?(despertara|hubiera nacido|existiera|estuviera|desperta*)
        no quiero (vivir|seguir viviendo|seguir aqui|estar aqui|estar viv*|despertar*|existir|
        seguir viv*|
        vivir mas|seguir con (esta|mi) vida)
        (acabar|terminar|acabe|termine) con (mi vida|mi sufrimiento|todo esto|esto de una vez|todo)
        hacerme dano(?! (al|en|con|otra vez (al|en)|entren*|levant*)); autolesion*
        lesionarme a proposito
        (me )?(cort*|he cortado|corte|cortado|corto|quem*)~(brazos|munecas|piernas|
        muslos)~(a proposito|aposta|otra vez|
        anoche|adrede|porque|para)
        (me corte|me he cortado|vuelto a cortarme)(?! (afeit*|con|el (dedo|pelo)|cocin*|las unas|
        al|la (mano|barba)|un|una|en la cocina|pelando))
        (corto|corte|cortado|cortarme|cortandome|quemo|quemarme) (a proposito|aposta|adrede|
        otra vez para|para (sentir|no sentir|calmar*))
        no (merece|vale) la pena (vivir|seguir (viviendo|aqui)|la vida|nada ya)
        (mejor|felices|bien|tranquilos) sin mi; no aguanto mas (la vida|vivir|esta vida|seguir|
        estar aqui)
        sin ganas de (vivir|seguir viviendo|seguir en); (no tengo|perdi*|perdido|sin|
        no me quedan) (las |ningunas |mas )?(ganas|motivos|
        razones|razon|motivo)~(vivir|seguir (viviendo|aqui|adelante)|estar aqui|existir)
        no (le )?(veo|encuentro) (la )?(salida|futuro|sentido a (la vida|vivir|nada|seguir)|
        sentido ya)
        (despedirme|despedida|adios) (de|a) (todos|todo el mundo|mi familia); carta de despedida
        soy una carga; una carga para (todos|mi familia|los demas|todo el mundo)
        tirarme (por|al|a las|desde|delante|a la via)~; saltar (al vacio|desde el puente|
        del puente|por la ventana|por el balcon)
        desaparecer (para siempre|del mapa|del mundo); para que (seguir (viviendo|aqui|asi)|
        vivir); dejar de (vivir|sufrir|existir)
        nadie (me )?(echaria de menos|notaria)~; odio (mi vida|vivir|estar viv*)
        la vida (no tiene|sin) sentido
        cansad* de (vivir|la vida|estar viv*|existir); harto de vivir; harta de vivir
        si (no estuviera|me muriera|muriese|desapareciera)
        (me da|da) igual (morir*|seguir viv*|vivir)
    """,
    "wide_self_harm_figure": """
        (muero|moria|morir*|morirme|muert(o|a)|matarme|mat*)~(de )?(risa|hambre|calor|sueno|sed|
        verguenza|ganas de (verlo|verte|empezar|entrenar|
        volver)|jaja*|aburrimiento|gusto|serie*|burpee*|sesion|ronda*|plancha*|agujeta*|flexion*|
        entren*|fondos|dominada*|sprint*|circuito*|cuestas|escaleras)
        (burpee*|serie*|sesion|plancha*|agujeta*|sprint*|entren*|circuito*|ronda*)~~(morir*|
        muert*|matarme|suicid*)
        suicid*~(sprint*|serie*|carrera*|series|agarre)
        (sprint*|carrera*|serie*|series|agarre)~suicid*; de muerte; morir en el intento; jaja*
        matarme a (trabajar|burpees|entrenar|series|flexiones|planchas); terminar con todo (el|lo|
        listo|hecho)
        (acabar|terminar|acabe|termine|terminado) con todo~(serie*|sesion|plan|lista|semana|
        entren*|a tiempo)
        desaparecer (una semana|de vacaciones|unos dias|el finde|el dolor|las agujetas)
        no quiero (estar aqui (hasta|toda)|hacerme dano|lesionarme); para no hacerme dano
        evitar hacerme dano; miedo de hacerme dano
    """,
    "wide_thinners": """
        sintrom; anticoag*; warfarin*; heparina; apixaban; eliquis; rivaroxaban; xarelto; adiro
        clopidogrel; aspirina (diaria|todos los dias|cada dia|a diario); acenocumarol
        diluir la sangre
    """,
    "wide_night": """
        noche*; de noche; me despiert*; despert*; madrugada; no (me )?dej* dormir; desvel*
        en la cama
        no (puedo|pude|consigo|he podido|logro|pego|he pegado) (dormir|ojo); quita el sueno
        durmiendo; nocturn*
    """,
    "wide_wakes": """
        no me (deja|dejan|dejo|dejaba|ha dejado|han dejado|dejaron) (dormir|pegar ojo|
        descansar)~(hombro|codo|brazo|muneca|cuello|dolor|espalda|mano)
        (no (he dormido|dormi|pude dormir|pegue ojo|puedo dormir)|sin dormir)~(por|del|con|
        de) (el |la |mi )?(hombro|codo|brazo|muneca|cuello|dolor|espalda|mano)
        me (despiert*|despert*|desvel*)~(dolor|hombro|codo|brazo|muneca|cuello|mano|espalda)
        (dolor|hombro|codo|brazo|muneca|cuello|espalda)~me (despiert*|despert*|desvel*|
        quita el sueno|impide dormir|tiene en vela)
        (dolor|hombro|codo|brazo|muneca|cuello|espalda)~no me (deja|dejan|ha dejado|dejo) dormir
    """,
    "wide_all_night": "toda la noche; todas las noches; cada noche; noche tras noche",
    "wide_many_nights": """
        todas las noches; cada noche; noches; (dos|tres|varias|2|3|4|segunda|tercera|otra) noche*
        seguid*; otra vez; toda la semana; siempre; desde hace; llevo; me despierta; todos los dias
    """,
    "wide_night_figure": """
        piernas; agujeta*; bebe; nin*; vecin*; perro; ruido; trabajo; guardia; resaca; fiesta; cena
        barriga; tripa; estomago; se me paso (por la manana|al levantar*)
    """,
    "wide_movement_linked": """
        (al|si|cuando|cada vez que) (me )?(gir*|dar (me )?la vuelta|doy la vuelta|mov*|muev*|
        apoy*|tumb* (sobre|encima|de ese)|
        cambi* de postura)
        dormi* (mal|en mala|encima|sobre|de ese|torcid*); mala postura; (de|por) dormir
    """,
    "wide_rest_pain": """
        en reposo; sin (moverlo|moverme|mover|mover*|hacer nada); quiet(o|a); aunque no (lo |la |
        me )?mueva
        a todas horas; constante*; todo el (dia|rato|tiempo); haga lo que haga; no (para|cesa|
        descansa)
        da igual (como|la postura|si (lo|me)); no depende de; sin parar; dia y noche
    """,
    "wide_weight_loss": """
        (perd*|pierdo|adelgaz*|bajad*|bajando|menos)~(peso|kilo*|kg); adelgaz*; ropa~(grande|
        ancha|baila)
        (perd*|pierdo|bajad*)~(talla|tallas); perdida de peso
    """,
    "wide_no_reason": """
        sin (querer*|motivo*|razon|explicacion|hacer (dieta|nada)|proponermelo|cambiar|dieta|saber|
        buscarlo|intentar*|ningun); no (se|entiendo|encuentro)~(por que|motivo|explicacion)
        com(o|iendo) (igual|lo mismo|normal|como siempre|bien|de todo); inexplic*; no (hago|
        estoy a|he hecho) (ninguna )?dieta
    """,
    "wide_night_sweat": """
        (empap*|moj*|cal(o|ada|ado))~(sabanas|cama|pijama|almohada)~; sudor* (nocturn*|
        por la(s)? noche(s)?|de noche|fri* por la noche)
        (sabanas|pijama|cama|almohada)~(empapad*|mojad*|chorre*|calad*)
        (despiert*|despert*|amanezc*|levanto)~(empapad*|sudad*|sudando|chorre*|mojad*|calad*|
        en sudor)
        (sudo|sudando|sudar)~(por la(s)? noche(s)?|de noche|durmiendo|mientras duermo)
        (noche*)~(empapad*|sudando|chorrean*|sudores)
    """,
    "wide_hot_room": """
        calor; ola de calor; edredon; menopaus*; sofoco*; calefaccion; ventilador
        aire acondicionado
        manta*; verano; bochorno
    """,
    "wide_unwell": """
        mal cuerpo; malestar; (encuentro|siento|encontrando|sintiendo) (muy |fatal|bastante |
        cada vez |tan )?(mal|enferm*|fatal|pachuch*)
        sin apetito; no tengo (hambre|apetito); debilidad general; hecho un trapo; decaid*
    """,
    "wide_cancer": """
        cancer; tumor*; quimio*; linfoma; melanoma; leucemia; oncolog*; radioterapia; metasta*
        remision; mastectomia; sarcoma; mieloma
    """,
    "wide_laugh": "jaja*; jeje*; jiji*; lol; xd; haha*; jajaj*; broma; es coña; es cona; coña",
}
