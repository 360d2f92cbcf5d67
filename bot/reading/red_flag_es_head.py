"""Spanish for the wide net: chest, breath, head and neck. Without accents, as it is shaped."""

HEART = {
    "wide_chest": """
        pecho; torax; esternon; caja toracica; boca del estomago; costillar; tetilla
        (debajo|detras|entre|bajo) (de )?(las |mis )?costillas
    """,
    "wide_heart": "corazon",
    "wide_pressure": """
        mano~(pecho|encima); (pecho|brazos) (me )?(pesa|pesan)
        presion*; opresi*; oprim*; apret*; apriet*; tirant*; tension; pesad*; peso; pesa; aplast*
        nudo; garra; losa; elefante; cincho; cinturon; faja; ahog*; encog*; comprim*; estruj*
        constri*; piedra encima; encima del pecho; bloque; tenaza*; prensa; estrecha
        (algo|alguien)~(sentad*|encima|apoyad*)
    """,
    "wide_pain": """
        pesan; pesaba*
        dolor*; duel*; doli*; dole*; molest*; pinch(azo|azos|a|an|aba|on|ones); punzad*; punzant*
        calambre*; ardor; arde; ardia; quemazon; quema; quemaba; escoz*; escuec*; lastim*
        tiron; tirones; latigazo*; clava*; clav*; jode; rabiar; matando; dolid*; pincha*; espasmo*
        resiente; cuchillad*; dana; daño
    """,
    "wide_on_me": """
        (elefante|losa|peso|yunque|piedra|alguien|tonelada*)~(encima|sobre mi|sentad*)
    """,
    "wide_hurry": """
        escaler*; cuesta arriba; cuestas; subir (cuestas|la cuesta|a casa|pisos|al); prisa; deprisa
        corriendo (al|para|hacia)~; al (autobus|bus|tren|metro); pendiente; repecho; camin* rapido
        andar rapido; ando rapido; esfuerz*
    """,
    "wide_odd": """
        se (me )?(cansa*|fatiga*|carga*); rar(o|a|os|as|isimo|ito); extran(o|a|os|as); fatal; mal
        mala; malamente; chung*; fe(o|a)
        no (va|esta|anda|me va|lo noto|lo siento|la noto|la siento|me noto) (muy |del todo )?bien
        algo (en el|dentro|por dentro); aleteo*; revoloteo*
    """,
    "wide_companion": """
        sudor*; sudand*; sudad*; sudo; nausea*; vomit*; mandibula; quijada; mareo*; maread*; mareab*
        (falta|faltaba|falto|faltando) (el |de )?(aire|aliento); ahogo; ahog*; palid*; gris
        sin (aire|aliento|respiracion); blanc(o|a) como*; ganas de (vomitar|devolver); arcadas
        (hacia|por|hasta|en|con|y|a) (el |la |los |mi )?(brazo|brazos|mandibula|cuello|espalda|
        garganta)( izquierd(o|a))?; brazo izquierdo; al brazo; sube al cuello; baja* por
        no (puedo|podia) respirar; (cuesta|costaba) respirar; irradi*; se (me )?(va|corre|extiende)
    """,
    "wide_heart_companion": """
        sudor*; sudand*; sudo; nausea*; vomit*; ganas de (vomitar|devolver); arcadas; palid*; ahogo
        (falta|faltaba|falto) (el |de )?(aire|aliento); sin (aire|aliento); mareo; maread*; fatiga
    """,
    "wide_again": """
        otra vez; de nuevo; ahora; hoy; esta semana; ultimamente; sigue; todavia; aun; ha vuelto
        volvio; a veces; cada
    """,
    "wide_muscle": """
        agujeta*; pectoral*; musculo*; muscular*; cargad*; estir*; sobrecarga*; del gimnasio
        (al|(?<!como )si lo|(?<!como )si me|si la|cuando me|cuando lo) (toc*|presion*|apriet*|
        apret*|palp*|estir*)
        al (tocar*|presionar*|apretar*|palpar*|estirar*); aducido
        (de|por|tras|despues de) (los |las |el |hacer |tanto |tanta )?(fondos|flexiones|press|
        dominadas|aperturas|entreno|entrenar|banca|burpees|series)
    """,
    "wide_chest_cue": """
        pecho (al|a la|a|hasta|contra|sobre|cerca|arriba|fuera|abierto|alto|tocando|y triceps|
        y espalda|y hombro*|y brazo*)( el| la)?~(barra|suelo|pared|banco|caja|cajon|triceps|
        espalda|hombro*|biceps)*
        (saca*|saco|abre|abrir|abro|sube|mete|llena*|entren*|trabaj*|toca*|toque|hice|hago|hacer|
        dia de|rutina de|press de|ejercicio* de|series de|maquina de) (el |de |los )?pecho
        (barra|cuerda|goma|mancuerna*|kettlebell|pesa|pesas|rodilla*|manos|codos|barbilla|anillas)~(
        a la altura del|al|hasta el|del|en el|contra el|pegad* al|sobre el|cerca del) pecho
        banda (de|del) pecho; pulsometro; cinta (del |de )?pecho; tom*~a pecho; a pecho
        dar el pecho; pecho lobo; pecho palomo; golpe de pecho; con el pecho (alto|fuera|abierto)
        pecho (congestionado|hinchado)
    """,
    "wide_effort": """
        escaler*; subir (cuestas|la cuesta|al|a|el|la|los|las)~; subo; subia; subi; subiendo
        cuesta*(?! (arriba )?(respir*|coger|mas|mucho|un|levant*|mover)); caminar; camino
        caminaba; caminando; andar; andando; andaba; ando; pasear; paseo; esfuerz*; correr; corro
        corriendo; corri; prisa; deprisa; rapido; pendiente; repecho; bici; cargar; bolsas; autobus
        el bus; metro; monte
    """,
    "wide_referred": """
        brazo; brazos; hombro; hombros; mandibula; quijada; espalda; omoplato*; escapula*; cuello
        garganta; paletilla*
    """,
    "wide_arm": "brazo; brazos; antebrazo*; biceps; triceps; codo; codos",
    "wide_jaw": "mandibula; quijada; muelas; garganta; maxilar",
    "wide_arm_motion": """
        al (mover*|levantar*|subir el brazo|subirlo|girar*|estirar*|empujar*|tirar*|rotar*|coger|
        apoyar*|presionar*)
        (cuando|si) (lo |la |los |las |me |el brazo )?(muevo|levanto|giro|estiro|subo el brazo|
        apoyo|roto); solo al mover*; de cargar (bolsas|la compra|con)
    """,
    "wide_sore": "agujeta*; cargad*; sobrecargad*; rigid*; tieso; tiesa; duro; dura",
    "wide_trained": """
        serie; series; burpee*; flexion*; dominada*; fondos; plancha*; press; entren*; sesion
        gimnasio; gym; repet*; rep; reps; ronda*; sprint*; esprint*; circuito*; clase; wod; remo
        sentadilla*; carrera*; calentamiento; kettlebell; barra; ejercicio*; colgad*; remos; cardio
        intervalo*; comba; series de; tabata; correr
    """,
    "wide_indigestion": "ardor de estomago; acidez; reflujo; indigestion; ardores; gases",
    "wide_heart_figure": """
        corazon~(partid*|rot(o|a)|encogid*|en un puno|alegr*|ilusion*|grande|de oro|tripas)
        (parte*|rompe|encoge|alegra|llega*|sale del|con todo el|de todo|mi)~corazon
        vuelco~(al ver|cuando vi|cuando me|ver); ojos que no ven; pulsaciones (medias|maximas|en)
        frecuencia (media|maxima|en reposo); zona [0-9]
        (a mil|fuerte|disparad*|acelerad*|a tope)~(burpee*|serie*|sprint*|ronda*|circuito|
        entreno|final|carrera|cuestas); infarto~(precio|factura|susto|final|partido)
        (susto|partido|final) de infarto; casi me da (un|algo)~; de corazon; por infarto
    """,
    "wide_breath": """
        no (consigo|puedo|logro)~(controlar|calmar|recuperar)~respiracion; jade(o|aba|
        ando)~(hablar|sentad*|solo)
        (falta|faltaba|falto|faltando|faltado) (el |de |un poco el |mucho el )?(aire|aliento|
        oxigeno|respiracion)
        sin (aire|aliento|respiracion|resuello|poder respirar|poder coger aire|poder tomar aire)
        no (recupero|recuperaba|recupere|me vuelve|vuelve) (el |la )?(aliento|aire|resuello|
        respiracion)
        no (puedo|podia|consigo|logro|pude|conseguia)~(respirar|coger aire|tomar aire|llenar|
        recuperar (el |la )?(aliento|respiracion|aire)|inspirar)
        (cuesta|costaba|costo|costando) (mucho |un monton |un poco |bastante |horrores |hasta )?(
        respirar|coger aire|tomar aire|coger el aire|el respirar)
        (dificultad*|problemas|trabajo)~respirar; ahogo; ahogos; me ahog*; ahogand*; ahogaba
        asfixi*; me asfixi*; jade(o|ando|aba|ante); pitos (al|en); silb* (al|en el pecho)
        respir*~(mal|dificil|corta|cortad*|agitad*|entrecort*|costos*|raro|superficial|fatigad*)
        (no )?(entra|entraba|llega|llegaba) (bien )?(el |mas |suficiente )?(aire|oxigeno)
        disnea
    """,
    "wide_winded": "respiracion; resoplando; fatigad*; jade*; aliento; sofoco*; sofocad*",
    "wide_not_settling": """
        en reposo; sentad*; tumbad*; parad*; acostad*; descansand*; quiet*; sin (hacer nada|motivo|
        razon|moverme|esfuerzo); sigo; sigue; seguia; todavia; aun; no se (me )?(pasa|quita|calma|
        iba|pasaba|quitaba|va); no (baja|para|remite|mejora|recupero|cede|bajaba|me recupero|cesa)
        hora; horas; minutos (despues|mas tarde|y)*; media hora; rato (despues|y|largo)*; en la cama
        en el sofa; hablando; al hablar; desde (ayer|anoche|esta manana|el|la|hace|que)
        viendo la tele; toda la (tarde|noche|manana); todo el dia
    """,
    "wide_settled": """
        pero (feliz|content*|genial|encantad*|bien|muy bien|satisfech*); que gozada
        (al|en un|a los|en) (minuto|rato|momento|segundo|pocos|dos|par)~(bien|nuevo|recuper*|
        perfect*|normal|estaba)
        (enseguida|rapido|en seguida)~(bien|recuper*|paso); (recuper*|se me paso) (enseguida|
        rapido|al minuto|en seguida|en nada)
    """,
    "wide_on_breathing": """
        al (respirar*|inspirar|coger aire|tomar aire|inhalar|llenar|respirar hondo|suspirar)
        (cuando|si|cada vez que) (respir*|inspir*|cojo aire|tomo aire|inhal*|lleno|cojo)
        cada (respiracion|inspiracion|bocanada); respir* (hond*|profund*|fuerte|a fondo); hondo
        (inspiracion|respiracion) (profund*|hond*); con la respiracion
    """,
    "wide_breath_cue": "reir*; risa; abdominal*; tos; toser; nariz; flato; agujeta*",
    "wide_nose": "nariz; moco*; resfriad*; catarro; constipad*; congestion*; alergia; mascarilla",
    "wide_heartbeat": """
        ritmo~(raro|irregular|extrano|loco)~(corazon|pecho); (corazon|latido*)~ritmo (raro|
        irregular)
        palpitac*; taquicard*; arritmi*; extrasistol*; fibrilac*
        (corazon|pulso|latido|latidos|pulsaciones)~(salt*|irregular*|loc(o|a)|raro|rara|raros|
        desboc*|galop*|vuelco*|revolot*|se me sale|se (me )?para*|falla*|fallos|brinc*|alete*|
        a trompicones|descompas*|desorden*|a destiempo|tropez*|tropiez*|se salta*|
        cosas raras|a saltos|disparad* sin)
        (salt*|falt*|pierd*|fall*) (un |algun |algunos )?latido*; vuelco* (el|en el|al|
        del) (corazon|
        pecho); latid* (raros|irregular*|de mas|fuera)
    """,
    "wide_heart_fast": """
        (corazon|pulso|pulsaciones|latidos)~(a mil|aceler*|disparad*|muy rapid*|rapid*|fuerte|
        1[2-9][0-9]|por las nubes|altisim*|alt(o|as)|a tope|desbocad*)
    """,
}
HEAD = {
    "wide_fainted": """
        desmay*; desvanec*; desplom*; sincope*; inconsciente*; lipotimia*; convuls*; colaps*
        vahido*
        (perd*|pierd*) (el |la |por un momento el |unos segundos el )?(conocimiento|sentido|
        conciencia|consciencia)
        (cai|caer*|caigo|caido|cayo|fui|ido|quede) redond*; me quede (ido|ida|inconsciente|k o|ko|
        sin sentido)
        (me )?(desperte|despertado|apareci|vi|encontre|encontraron|encontro) (tirad* )?en el suelo
        me fui al suelo; se me fueron las luces; apagon; me apague; me derrumb*
        patatus; telele; yuyu; soponcio; ataque epileptico; crisis epileptica
        (todo|lo vi todo|vi todo|vista|se puso todo|se volvio todo) (en )?negro
        se me (apag*|fue) (la luz|el mundo|la consciencia)
    """,
    "wide_near_faint": """
        se me (cerr*|apag*|puso negra|fue) la (vista|vision); casi (me |que me )?(desmay*|caigo|
        voy al suelo|desplom*|pierd*|quedo|caia)
        (a punto de|por poco|me iba a|pense que me|crei que me|parecia que me|como si me fuera a|
        sensacion de|estuve por)~(desmay*|caer*|perder|desplom*|caia)
        se me (nubl*|iba|va|fue|oscurec*) (la )?vista; se me (iba|va) la cabeza; vista (nublada|
        borrosa|negra)
        estrellitas; puntitos; vi (negro|puntos|luces|estrellas)
    """,
    "wide_near": "casi; a punto; por poco; iba a; pense que; crei que; parecia",
    "wide_faint_figure": """
        (desmay*|colaps*|desplom*|inconsciente*)~(sofa|cama|sueno|cansancio|web|servidor|app|
        trafico|
        hambre|amor|tecnica|postura); me desplome en (el sofa|la cama); codos (se )?desplom*
        cadera~desplom*; hombros~colaps*; (me )?desmayo si (no|hago); desmay* de (risa|hambre|amor)
    """,
    "wide_dizzy": """
        mare(o|os|ado|ada|e|aba|arme|ando|ito|illo|ar); vertigo*; tambale*
        (todo|cabeza|habitacion|sala) (me )?(da|daba|dio|dando) (muchas )?vueltas; me (da|daba|
        dio) vueltas
        (perd*|pierdo|sin|falta de) (el )?equilibrio; inestab*; aturdid*; la cabeza se me va
    """,
    "wide_dizzy_figure": """
        (plan|app|numeros|tanto|tantos|coche|barco|autobus|curvas|ejercicios)~mare*
        mare*~(plan|app|numeros|tantos|con tanto|coche|barco|autobus|curvas|la perdiz)
    """,
    "wide_confused": """
        perdi la (cabeza|nocion); que (dia|hora|ano) era; no sabia (que|quien|ni)
        me (confundi|lie|desoriente|perdi|aturdi); no sabia ni
        confus*; desorient*; no (sabia|se) (donde|que|quien|ni)~; decia cosas*; desvari*; delir*
        incoheren*; ido; ida; atontad*; atontolinad*; aturdid*; espes(o|a); perdid(o|a)
        no (me )?(acordaba|acuerdo|recuerdo|recordaba)~; hablaba raro; no coordin*; deje de sudar
        no (razon*|pensaba con|enlazaba); cosas sin sentido; tonterias sin sentido; no sudaba
        no me enteraba; zombi*
    """,
    "wide_disoriented": """
        desorient*; delir*; desvari*; no sabia donde (estaba|me); no se donde (estoy|estaba)
        decia (cosas sin|incoheren*); incoheren*; no reconoc*
    """,
    "wide_confused_figure": """
        confus*~(plan|app|ejercicio*|semana|serie*|video|programa|mensaje|horario*|numero*|con el|
        con la|nombre*|dia|dias)
        (plan|app|ejercicio*|mensaje|programa|video|lio)~confus*; me (confundi|he confundido) (de|
        con|en)
        perdid(o|a) (con|en) (el|la|los) (plan|app|programa|series|video)
        desorientad* (con|en) (el|la) (plan|app|programa)
    """,
    "wide_heat": """
        calor; caloraz*; bochorno; al sol; el sol; insolacion; sauna; horno; sofoc*; calima
        (3[0-9]|4[0-9]) ?(grados|c); golpe de calor; ola de calor; un calor*; calentaz*; asfixiante
    """,
    "wide_face_speech": """
        confund*~palabras; (cambi*|mezcl*|equivoc*)~palabras
        no (pude|podia|puedo)~(mover ni sentir|sentir ni mover|mover)~(pierna|brazo|lado|
        mano)~(izquierd*|derech*)
        (pierna|brazo|lado|cara)~(paraliz*|dejo de (moverse|funcionar|responder)|floj(o|
        a) de repente)
        (arrastr*) (la |el )?(pierna|pie)
        (cara|boca|labio|labios|parpado|mejilla|sonrisa|comisura)~(caid*|cae|caia|cayo|torcid*|
        tuerc*|torcio|dormid*|paraliz*|colgand*|descolg*|rar(a|o)|desviad*|hormigue*|acorchad*|
        entumec*|insensible)
        (caid*|torcid*|dormid*|paraliz*|torcio|cayo|durmio|colg*)~(cara|boca|labio|comisura|
        parpado|sonrisa)
        (lado|mitad|media) (de )?(la |mi )?cara; media cara; se me (tuerce|torcio|cae|
        durmio)~(cara|boca)
        lengua~(trap*|torpe|trab*|pesad*|gord*|dormid*|acorchad*)
        (hablo|hablar|hablaba|habla|palabras|hablando|pronuncio)~(trab*|arrastr*|no me sal*|
        no sal*|borrach*|enred*|torpe|pastos*|balbuc*|rar(o|a)|como (un )?borrach*|se me lia*)
        (trab*|arrastr*|enred*)~(palabras|lengua|hablar|habla)
        no (puedo|podia|consigo|logro|pude|conseguia)~(hablar|articular|decir|pronunciar)
        no (encuentro|encontraba|doy con|me vienen|acierto con) (las |con las )?palabras; (sale|
        salen|salia)~(revuelt*|enredad*|sin sentido|al reves)
        (dormid*|acorchad*|entumec*|paraliz*|hormigue*|insensible)~~(cara|boca|labio|lengua|mejilla)
        no me (salen|salian|sale|salia|venian) (las |la |bien las )?(palabra*|voz); balbuce*; ictus
        derrame cerebral; no (podia|puedo|consigo) sonreir; medio cuerpo; un lado del cuerpo
        (lado|parte|mitad) (izquierd*|derech*) (del|de mi) cuerpo; embolia
    """,
    "wide_face_figure": """
        dentista; anestesia; muela*; empaste; sin palabras; no puedo hablar (ahora|hoy|luego|
        mucho)
    """,
    "wide_vision": """
        sin ver~ojo*; (perdi|deje de ver|no vi|no veia)~ojo*; veo doble; vision doble; (perdi*|
        pierdo|perdido) (la )?(vista|vision)
        no veo (por|con|de|bien por|bien con)~ojo*; ceguera; me quede cieg*; veo (borroso|mal) de
        (vista|vision) (se me fue|perdida|por un ojo)
    """,
    "wide_sudden": "de repente; de pronto; de golpe; subit*; bruscamente; repentin*",
    "wide_headache": """
        cabeza~~(revent*|estall*|explot*)
        cabeza~(revent*|estall*|explot*|partir|abrir*)
        dolor~de cabeza; dolor~(cabeza|nuca|sien|sienes); cefale*; jaqueca*; migran*
        (duele|dolia|dolio|estalla|estallaba|revienta|explota|exploto|doliendo)~cabeza
        cabeza~(estall*|revent*|revient*|explot*|duele|dolia|dolor|martill*|latid*)
    """,
    "wide_worst": """
        de la nada; de la nada
        peor; de (repente|golpe|pronto); subit*; brusc*; trueno; explo*; estall*; en (un |
        unos )?segundo*
        nunca~(igual|asi|tan|nada|parecid*|tenido|dolido|semejante); insoport*; brutal; horrible
        tremend*; fortisim*; salvaje; atroz; de mi vida; bestial; repentin*
        como (si|un|una) ?(me|golpe|mazazo|martillazo|rayo|latigazo|hachazo|trueno|explosion|
        pedrada)*
    """,
    "wide_hangover": """
        resaca; (el|mucho|tanto|de|con) vino; tinto; cervez*; copas; sin cafe; caf(e|eina); jaj*
        fiesta
    """,
    "wide_head_knock": """
        (golp*|golpe|di|dado|dio|choq*|choc*|porrazo|cabezazo|coscorron|impact*|cayo|peg*|lleve|
        llevado|trastazo|castana|tortazo|arree|meti|metido|estamp*)~~(cabeza|craneo|frente|sien|
        nuca)
        cabeza~(golp*|choc*|contra|peg*|rebot*)~; conmocion*; traumatismo*; cabezazo*; coscorron*
        (caido|cayo|cai|caer)~de cabeza; (golpe|trancazo|madrazo|mamporro|zape|cate)~cabeza
        (abri|abierto)~(cabeza|ceja); chichon
    """,
    "wide_head_grave": """
        vomit*; memoria; no (recuerdo|me acuerdo|recordaba|me acordaba); amnesi*; somnol*; sueno
        confus*; desorient*; inconscien*; desmay*; (perd*|pierd*)~(conocimiento|sentido|conciencia)
        laguna*; arcadas; sangr*~(oido|nariz|oreja); lo mismo; adormil*; repit*; convuls*
        devuelt*; dormid*; en blanco; olvid*; veo doble; pupila*; no despert*; cuesta despertar*
    """,
    "wide_knock_figure": """
        (cabeza~pared~(plan|app|intent*|con)); sin cabeza; de cabeza (al|a por)
        (barra|pesa|kettlebell|mancuerna*|brazos|manos|disco)~(por encima de|sobre|encima de|
        detras de) la cabeza
        cabeza (a|hacia|por encima de|sobre) la barra; clav*; me (viene|vino) a la cabeza
        (dar|dado|dando|di|doy) vueltas~cabeza; metid* (en|entre) (la )?cabeza; cabeza fria
        (meto|meti|meter)~en la cabeza; cabeza dura; llevo~en la cabeza; peg*~(voltereta|susto)
    """,
    "wide_neck": "cuello; cervical*; nuca; cogote; pescuezo",
    "wide_neck_hurt": """
        (cayo|caido|dio|golpeo)~(barra|pesa|disco|kettlebell|mancuerna)~(cuello|nuca|cervical*)
        (barra|pesa|disco|mancuerna*|kettlebell)~(cayo|golpeo|dio|caido)~(en|sobre|encima) (el |
        del )?(cuello|nuca)
        se me (cayo|ha caido)~(en|sobre) el cuello
        (golpe*|golpead*|latigazo|torc*|caid*|cai|cayo|crujid*|crujio|chasq*|partid*|accidente|
        choque*|
        aterric*|doble|aplast*|lesion*)~(cuello|cervical*|nuca)
        (cuello|cervical*|nuca)~(golpe*|crujio|chasq*|torcio|torci|doblo|aplast*|accidente|caid*|
        cai|choque|lesion*|partio)
    """,
    "wide_neck_figure": """
        cruj*~cuello~(siempre|cada|manana*|como siempre); con el agua al cuello; cuello de botella
        a cuello; hasta el cuello; (goma|toalla|cadena)~(cuello)
    """,
    "wide_both_limbs": """
        (ambos|ambas|los dos|las dos|dos) (brazos|manos|lados|antebrazos|munecas|piernas)
        brazos y piernas; manos y pies; las cuatro; los brazos; las manos
    """,
}
