"""Spanish for the wide net: arms, legs and the whole person."""

LIMB = {
    "wide_joint": """
        hombro; hombros; codo; codos; muneca; munecas; dedo; dedos; pulgar*; menique; nudillo*
        articulacion*; rodilla*; tobillo*; clavicula; brazo; rotula; hueso; mano
    """,
    "wide_looks_wrong": """
        fuera de (su )?(sitio|lugar); chuec*; virad*; salt(on|ado); deform*; descolocad*
        desencajad*; desviad*
        torcid(o|a|os|as)(?! (de|por dormir)); doblad* (hacia|al reves|para|raro|mal)
        en (una )?(posicion|angulo|postura) (rar*|extran*|imposible|mala|antinatural)
        (bulto|escalon|hueso)~(sobresal*|asom*|sale|salid*|fuera|raro); cuelga~rar*; angulo rar*
        no (esta|lo tengo|la tengo) en su (sitio|lugar); mal puest*; se ve (rar*|mal|torcid*|fatal)
        tiene (mala|una) (pinta|forma)~; forma (rara|extrana); cuadrado
    """,
    "wide_slipped": """
        (hombro|codo|dedo|pulgar|rotula|muneca)~se (me )?(fue|va|iba|ha ido|movio|desplazo)~
        (se me fue|se fue|se me ha ido)~(volvio|vuelto|vuelve)
        zaf(ado|ada|o|e|aron); se (me )?zaf*; dislocad*; dislocac*; disloc*; luxa*; luxad*
        sublux*; desencaj*; dislocaron
        (se me|se) (ha |habia |me ha )?(salido|salio|sale|sali|salia|va|fue|salir)~(hombro|
        codo|dedo|pulgar|muneca|rodilla|rotula|brazo|sitio|lugar)
        (hombro|codo|dedo|pulgar|muneca|rodilla|rotula)~(salido|se (me )?(salio|sale|ha salido)|
        fuera de|se (me )?(fue|ha ido) de|salirse|salio de)
        se (me )?(movio|fue|salio|ha ido|ha salido) de(l| su) (sitio|lugar)
        fuera de su (sitio|lugar); (hombro|codo|dedo|pulgar|rotula|muneca) fuera(?! (de la|del|en))
    """,
    "wide_socket": """
        no (encaj*|asient*|esta bien (puesto|colocado|metido)); articulacion suelta
        fuera del hueco
    """,
    "wide_today": "hoy; todavia; aun; sigo; ahora; desde; esta manana; todo el dia; ya no",
    "wide_lifts": "[0-9]+ ?(kg|kilos|k)",
    "wide_hang": """
        colgad*; colgar*; colgand*; colgarme; cuelg*; suspension*; en la barra; de la barra
        colgue
    """,
    "wide_weak_side": """
        (lado|brazo|mano) (debil|flojo|floja|fuerte|malo|mala|bueno|buena|dominante); punto debil
        punto flojo
    """,
    "wide_cant_open": """
        no (puedo|consigo|logro|soy capaz)~(abrir|girar|desenroscar|abrochar*|coger|sostener|
        sujetar|agarrar)
        ~(bote|tarro|frasco|tapa|tapon|botella|llave*|puerta|grifo|taza|boli|vaso|cremallera|
        boton*|movil)
    """,
    "wide_comes_back": """
        cada semana~(desde|hace|meses); (desde hace|hace|llevo) (varios|dos|tres|cuatro|2|3|4|
        unos|muchos) meses~
        (semana tras semana|mes tras mes); (vuelve|vuelto|aparece) (una y otra vez|cada semana|
        siempre); va y viene~(meses|semanas)
    """,
    "wide_harmless_back": """
        agujeta*; rigid*; mejor; record; progres*; entren*; plan; primera vez; sin (dolor|
        molest*); bien; genial; fuerte
    """,
    "wide_put_back": """
        (volvio|volvi*|vuelto|metio|metido|puso|coloco|colocado|encajo|entro|entrar|puse|coloque|
        meti|encaj*|recoloc*)~(sitio|lugar|dentro|articulacion|solo|sola)
    """,
    "wide_past": """
        hace (unos |muchos |varios |dos |tres |cinco |diez |[0-9]+ |un |mucho )?(anos|ano|meses|
        tiempo|decadas); de (pequen*|nin*|joven|chaval*|crio); (el|la) (ano|verano|temporada)
        pasad*; en 20[0-9]{2}; antigu*; adolescen*; en su dia; cuando era; ya (no|nunca) me
    """,
    "wide_out_figure": """
        (salir|sali|salgo|salio|sale|salimos|saliendo) (a|de|con|por|bien|mejor|mal|genial|perfecto|
        redond*|fatal|regular|todo|la serie|las series|el entreno) ?(correr|casa|fiesta|marcha|
        trabajo|la oficina|viaje|
        paseo|compras|cenar|tomar|comprar|dar)*
        fuera de (casa|forma|juego|horario|serie|la oficina|lo normal|tiempo|servicio)
        se me (sale|salen|fue|fueron|va) (el corazon|por la boca|las lagrimas|la serie|el dia|
        la semana|la mano con|la olla|la pinza|la tarde)
        sac* (el )?(codo|hombro|pecho|dedo)
    """,
    "wide_form_cue": """
        (codos|hombros|muneca*|rodillas)~(fuera|dentro|pegad*|abiertos|abajo|adelante|rect*|bloque*|
        juntos|arriba|neutr*)
        (bloque*|abr*|peg*|sac*|met*|baj*|sub*|mant*) (bien |los |el |un poco |mucho )?(codos|
        hombros)
        tecnica; postura; en el video; forma de (hacer|coger); forma fisica; tengo que; debo
    """,
    "wide_cold_limb": """
        (mano|dedos|brazo|dedo)~(fri(o|a|os|as)|palid*|blanc*|azul*|morad*|dormid*|helad*|sin pulso)
        (fri(a|o|os)|palid*|blanc*|azul*|dormid*)~(mano|dedos|brazo)
    """,
    "wide_stuck": """
        no hay (manera|forma) de (meter*|colocar*|poner*|encajar*|devolver*)
        no (vuelve|entra|se mete|encaja|puedo (meter*|colocar*)|ha vuelto|quiere entrar)
        sigue fuera
        (se ve|pinta|aspecto)~(mal|fatal|horrible|feo|raro)
    """,
    "wide_pop": """
        hizo (ras|rac|zas|tac|plof|chas|crash|clonc|clic|clack|pum|plaf); (me |se me |
        algo )?(trono|troné|tronaron|tronido*); chasquido*; crujido*; crujio; chasqueo; desgarr*
        rasg*; rotura*; pedrada; petazo
        (algo|musculo|tendon|biceps|pectoral|hombro|codo|triceps|gemelo|antebrazo|
        muneca)~(se )?(me )?(ha )?(
        romp*|rompio|roto|rota|parti*|solt*|salt(o|ado)|arranc*|dio un|cruj*|hizo (crac|crack|
        clac|pop|clic))
        (note|senti|oi|escuche|sono|hizo|notado|sentido|oido|ha hecho|noto)~(crac|crack|clac|pop|
        latigazo|
        rotura|algo (romp*|que se|se me)|tiron (fuerte|seco|tremendo)|como si se|golpe seco)
        (roto|rompi|partido|arrancado|se me rompio|se me ha roto|se me ha partido|
        se me partio) (el|un|
        algo|la|del|de la)~(musculo|tendon|biceps|pectoral|hombro|codo|triceps|muneca|ligamento|
        fibras|dedo|brazo|manguito); rotura de fibras; crac
    """,
    "wide_pop_figure": """
        (siempre|a veces|cada vez|desde siempre|suele*|normalmente|de toda la vida|como siempre|
        habitual)~(cruj*|chasqu*|crac)
        (cruj*|chasq*|crac*)~(siempre|sin dolor|no (me )?duele|como siempre|nunca duele|sin molest*|
        habitual|normal|desde siempre|a veces|cada vez|indolor*)
        (goma|banda|camiseta|pantalon|malla*|cuerda|zapatilla*|movil|callo*|piel|guante*|pantalla|
        cremallera|bolsa|correa|cinta)~(romp*|rot*|parti*|rasg*|desgarr*|solt*)
        (romp*|rot*|parti*|rasg*|desgarr*)~(goma|banda|camiseta|pantalon|malla*|cuerda|zapatilla*|
        movil|callo*|piel|guante*|record*|marca*|racha|coco|ritmo|hielo|rutina|cabeza)
        roto por (la|el) (sesion|entreno); estoy rot*; me parto; me parti de; tiron de orejas
    """,
    "wide_loss": """
        no (puedo|podia|consigo|logro|pude)~(mover*|levant*|dobl*|estir*|gir*|cerrar|agarr*|apret*|
        hacer fuerza|sujet*|subir*|apoyar*|usar*|coger|flexion*)
        sin fuerza; fuerza; moraton*; moreton*; hematoma*; morad*; cardenal*; bulto; hueco; deform*
        hinch*; bola; hundid*; inflam*; debil*; negr(o|a); forma; se me (quedo|ha quedado)~; caid*
        desigual; encogid*; recogid*; subid* el musculo; inutil; colgand*; floj*
    """,
    "wide_cant_lift": """
        (intento|trato de|quiero) (subir|levantar|mover|elevar)~(brazo|hombro)~no pasa nada
        (intent*|trat*|quiero) (de )?(subir|levantar|mover|elevar)~(brazo|hombro)~(no (pasa|sube|
        va|se mueve|responde)|nada)
        no (puedo|podia|consigo|logro|soy capaz de|me deja|pude|hay manera de|hay forma de|
        alcanzo a|
        llego a)~(levant*|subir|elevar|alzar|mover|despeg*|separar)~(brazo|hombro)
        (brazo|hombro)~no (me )?(puedo|sube|se (me )?levanta|lo puedo|responde|me responde|
        lo levanto|
        lo subo|va|se mueve|me deja|consigo|logro|hay)
        no (me )?(sube|levanta|responde|se mueve) (bien )?el (brazo|hombro); no levanto el (brazo|
        hombro)
        incapaz~(levantar|subir|elevar|mover)~(brazo|hombro)
        (brazo|hombro)~no (me )?(pasa|llega|alcanza|sube)~(de|a|por|hasta)~; brazo~(caido|
        colgando|muerto|inutil|sin vida); imposible (levantar|subir|mover) el (brazo|hombro)
    """,
    "wide_lift_figure": """
        [0-9]+ ?(kg|kilos|k); peso; mancuerna*; pesa; kettlebell; mas peso; otra rep; jaja*; ultima
        agujeta*; repet*; series; reps; fallo
    """,
    "wide_fall": """
        cai; caida; caido; caerme; caigo; resbal*; tropec*; tropez*; aterric*; me estampe; porrazo
        batacazo; costalazo; castanazo; accidente; trastabill*; me di contra; talegazo; cayo; caer
        piñazo; revolcon; leche(?! de)
    """,
    "wide_fall_figure": """
        caid(a|o) (de|del) (pelo|red|internet|tension|sistema|servidor|rendimiento|ritmo|app|
        la noche)
        (cai|caido|caer|caigo) (dormid*|rendid*|en la cama|en la tentacion|en la cuenta|bien|mal|
        enferm*|malo|mala|de pie|la noche|del guindo)
        (me )?cae (bien|mal|genial|la); dejar caer; caida controlada; deja* caer
    """,
    "wide_limb": """
        espinilla*; tibia*; pantorrilla*
        brazo; brazos; antebrazo*; biceps; triceps; codo; codos; mano; manos; dedo; dedos; pulgar*
        menique*; muneca; munecas; hombro; hombros; pierna; piernas; pie; pies; pantorrilla*
        gemelo*
        muslo*; pectoral*; extremidad*; palma; deltoides; cuadriceps; musculo*
    """,
    "wide_legs": """
        pierna; piernas; pie; pies; rodilla*; tobillo*; caminar; andar; equilibrio; gemelo*
    """,
    "wide_face": "cara; labio; labios; mejilla; lengua; boca",
    "wide_swollen": """
        gord(o|a); como (globos|balones|un globo|pelotas|morcillas); globo
        mas (gord*|grande|ancho|grueso|hinchad*)( que el otro)?; engord*~brazo; hinch*; inflamad*
        inflamo; inflamac*; inflama; tumefact*; edema; abultad*; hinchazon
        el doble (de|del|que)*; como (un globo|una bota|un melon|un jamon|una pelota|una pata|
        un botijo)
        gord(o|a|os|as) como
    """,
    "wide_grip_lost": """
        no (puedo|podia|consigo|logro|pude)~(agarr*|cerrar (el|la|bien|los)~(puno|mano|dedos)|
        apret*|
        sujet* (la|el|un|una|nada)|coger (la|el|un|una|nada|ni)|hacer (el )?puno)
        sin (fuerza|agarre) (en|de) (la|las|los) (mano|manos|dedos)
        (perd*|pierdo)~(el |mi )?(agarre|fuerza de agarre|fuerza en la mano|fuerza en los dedos)
        (se me caen|se me cae|se me caian|se me cayo)~(cosas|todo|vaso|taza|llaves|movil|plato|boli)
    """,
    "wide_hard": """
        dur(o|a|os|as|isim*) como; piedra; madera; tens(o|a) como; rigid*; petread*; durisim*
        dur(o|a)
    """,
    "wide_severe": """
        me muero de dolor; un dolor (horrible|tremendo|brutal|insoportable); que me muero
        insoport*; horrible*; brutal*; muchisim*; terrible; fortisim*; tremend*; atroz; salvaje
        no (lo |la )?(aguanto|soporto); desproporc*; rabiar; infernal; cada vez (mas|peor); llor*
        a mas; (dolor|duele) (muy |tan )?(fuerte|intenso); bestial; peor dolor; va a mas; gritar
    """,
    "wide_colour": """
        morad*; azul*; roj(o|a|iz*); amoratad*; violac*; palid*; blanc(o|a|uzc*); negr(o|a|uzc*)
        cambi*~color; color (rar*|extran*|oscur*); venas; oscur*
    """,
    "wide_turned_colour": """
        (esta|se (me )?(ha )?(pone|puso|puesto|quedo|queda|vuelve)|tengo|color|estan)~(azul*|
        morad*|amoratad*|violac*|negruz*)
    """,
    "wide_heavy": "pesad(o|a); pesa (mucho|un monton|como|el doble); plomo; pesadez",
    "wide_pump": """
        congestion*; pump; bombe*; hinchad*~(entren*|biceps del|de gusto|de orgullo)
        venas marcadas; bien hinchad* (tras|de|despues); petad*
    """,
    "wide_minor": """
        picad*; picadura; mosquito; avispa; abeja; rodilla; tobillo; un poco (hinchad*|inflamad*)
        (algo|ligeramente|levemente) (hinchad*|inflamad*); regla; ojo*; encia*; garganta; barriga
        tripa; ganglio*
    """,
    "wide_kit": """
        (goma|banda|kettlebell|mancuerna*|disco|camiseta|pesa|cinta|zona|luz|dia|numeros?|esterilla|
        caja|anillas|cara)~(azul|roj(o|a)|negr(o|a)|verde|morad(o|a)|blanc(o|a)|caliente)
        agua caliente; ducha; bolsa de calor; manta electrica; en caliente; calentamiento; tarjeta*
    """,
    "wide_cold": """
        frio (de|del|que|fuera|en)~; por el frio; del frio; helada fuera; invierno; nieve; guantes
        bajo cero; hielo; (mucho|tanto|que|con) (el )?frio
    """,
    "wide_bruise": """
        moraton*; moreton*; hematoma*; cardenal*; morad(o|os); tinta; pintura; rotulador
    """,
    "wide_urine": """
        (orina*|pis|pipi|mear|meo|meando|orino|mee|meada|orinado|meado)~~(oscur*|marron*|coca*|
        cola|te|sangre|
        roj*|negr*|cafe|rosad*|ros(a|ita)|naranja|teja|vino|color rar*)
        (oscur*|marron|sangre|roj*|color coca|cola|te negro)~(orina|pis|pipi|mear|meo|orinar)
        sangre~(orina|pis|mear)
    """,
    "wide_urine_figure": "remolacha; vitamin*; clar(a|o|it*); moras; complejo b",
    "wide_cant_straighten": """
        (codo*|brazo*)~no (se )?(desdobl*|despleg*|abren|abre|enderez*)
        no (puedo|consigo|logro|podia|soy capaz de|hay manera de)~(estir*|extend*|enderez*|
        poner rect*|
        desdobl*)~(codo*|brazo*)
        (codo*|brazo*)~(no (se )?(me )?(estira*|extiend*|puedo estirar*|los puedo estirar|
        lo puedo estirar|consigo estirar*|quedan rectos)|(se me )?(quedan?|quedado|quedo|estan|
        esta) (doblad*|encogid*|flexionad*|bloquead*))
        (codo*|brazo*)~a medio (doblar|estirar); (codo*|brazo*)~medio (doblad*|encogid*|
        flexionad*); tiranosaur*; t rex
    """,
    "wide_fever": """
        calentura; fiebre; febril; febricula; decimas; escalofrio*; tiriton*; destemplad*
        (38|39|40) (y medio|y pico|con|,)~~(duele*|cuerpo|escalofrio*|cama|fiebre|malo|mala|
        tiritando); (38|39|40) y (medio|pico)
        (3[89]|40)( [0-9])?( con [0-9]+)? ?(grados|de fiebre|c); temperatura~(alta|3[89]|40)
        termometro~(3[89]|40); (3[89]|40)~termometro
    """,
    "wide_fever_figure": """
        fiebre (del|por el|por los|por la|de|compradora) (sabado|oro|gym|gimnasio|dominadas|
        fitness|compra*|futbol)
        (temperatura) (ambiente|del gimnasio|fuera|exterior|del agua); escalofrios de (emocion|
        gusto)
        (3[89]|40) grados (a la sombra|fuera|en la calle|en el|hoy|en|al sol|y)
        hace~(3[89]|40) grados
    """,
    "wide_hot": "caliente*; ardiendo; quema*; quemando; calor*; hirviendo; arde",
    "wide_red": "roj(o|a|os|as|iz*|ec*); enrojec*; colorad*; colorado; rubor*",
    "wide_calf": """
        pantorrilla*; gemelo*; batata; (una|la) pierna (izquierda|derecha|sola); solo una pierna
        pierna (izquierda|derecha)
    """,
    "wide_numb": """
        entumid*; adormecid*; guantes puestos; como con guantes; entumec*; hormigue*; adormec*
        adormil* (el|la|los)~; acorchad*; acorch*; insensib*
        se me (duerm*|durm*|ha(n)? quedado dormid*); sin (sensibilidad|tacto|sensacion)
        cosquilleo*; corriente* (electric*|por|en|hacia); calambrazo*
        descarga*; electric*; agujas; alfiler*; alfilerazo*; pinchacitos; hormigas
        no (siento|noto|me siento|me noto|sentia|notaba) (bien |casi )?(la |el |los |las |mi |
        mis )?(mano|
        manos|dedo|dedos|brazo|brazos|pierna|piernas|pie|pies|pulgar|cara|menique|yema*|antebrazo|
        punta*)
        (perd*|pierdo) (la |algo de |toda )?sensibilidad; tacto (raro|perdido)
        (mano|manos|dedo|dedos|brazo|brazos|pierna|pie|antebrazo|pulgar|menique|yemas|codo|cara|
        palma)~(
        dormid(o|a|os|as)|se (me )?(duerm*|durm*|ha dormido|han dormido)|muert(o|a|os|as)|tont(o|
        a|os|as))
        (se me (duerm*|durm*)|se me (ha|han) dormido|dormid(o|a|os|as)) (la |el |los |las |mi |
        toda la |medio )?(mano|
        manos|dedo|dedos|brazo|brazos|pierna|pie|antebrazo|pulgar|menique|palma)
    """,
    "wide_numb_figure": """
        (por|del|de|con) (el |tanto )?frio; helad*; dormi* (sobre|encima); (he |habia )?dormid(o|
        a) (sobre|
        encima|mal sobre|con el brazo|apoyad*); dentista; anestesia; culo; de estar sentad*
        cruz*~pierna*; mala postura; apoyad* en; cosquilleo de (emocion|nervios|gusto)
        no (siento|noto) (los|las|mis) (brazos|piernas|hombros)~(jaja*|agujeta*|entreno|hoy|
        despues|serie*|reventad*)
    """,
    "wide_weak": """
        (poca|menos|nada de|ninguna|tan poca) fuerza
        dej(o|aron|a|an) de (obedec*|responder*|funcionar*|moverse|hacer caso); obedec*; debil
        debiles; debilidad; debilitad*; sin (nada de |apenas )?fuerza*; sin apenas fuerza
        (perd*|pierdo|falta de|no tengo|menos|falta|apenas tengo|casi sin) (toda )?(la |de |
        mucha |nada de )?fuerza*
        no (me )?responde*; torpe*; torpeza; se me (caen|cae|caian) (las |todas las )?(cosas|todo|
        de las manos)
        flacid*; paraliz*; paralis*; floj(o|a) (el |la |los )?(brazo|mano|pierna)
        (brazo|mano|pierna|dedos|agarre)~(floj(o|a|os|as)|sin fuerza|torpe*|inutil*|fall*|tont*)
        no (me )?obedec*
    """,
    "wide_tired": """
        ultima serie; al final; agotad*; cansad*; fallo (muscular)?; reventad*; fundid*
        cansancio; jaja*
        ultima(s)? (rep|reps|repet*|ronda|rondas); agujeta*; hecho polvo; hecha polvo; pajara
        despues de (la|las|el|los|tanta|tanto)~(serie*|sesion|entren*|dominadas|remo*|paseo*)
        tras (la|las|el|los)~(serie*|sesion|entren*|dominadas|remo*); ganas; motivac*; mental*
        punto debil; punto flojo; mi (lado|brazo) (debil|flojo); lado debil; lado flojo
        mas debil que
    """,
}
