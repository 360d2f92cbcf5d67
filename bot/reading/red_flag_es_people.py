"""Spanish for who is spoken of, denials, questions, sites and pain in words."""

PEOPLE = {
    "person": """
        (mi |mis |la |el |su |sus |nuestr(o|a) |un |una |a mi |de mi |al |del )?(madre|padre|mama|
        papa|hermano|hermana|mujer|
        marido|esposo|esposa|pareja|novio|novia|amigo|amiga|amigos|amigas|companero|companera|
        companeros|colega|jefe|
        jefa|vecino|vecina|hijo|hija|hijos|hijas|nino|nina|ninos|crio|cria|bebe|abuelo|abuela|
        yayo|yaya|tio|tia|primo|prima|
        sobrino|sobrina|suegro|suegra|cunado|cunada|perro|perra|gato|gata|peque|cliente|clienta|
        paciente|alumno|alumna|
        chaval|chavala|chico|chica|senor|senora|tipo|portero|jugador|jugadora|entrenador|actor|
        actriz|personaje|
        nieto|nieta|padres|familiar|compi|compa|cuate|parce|pana|carnal|ex|monitor|profe|
        profesor|profesora)
        alguien; otr(o|a) (persona|chic(o|a)|companer(o|a)); (una|esa|aquella) persona; gente
        el otro; la otra; (un|uno|una) (tio|tia|chaval|senor|corredor|ciclista|futbolista|
        del (gimnasio|grupo|equipo|trabajo|curro)|de (los|mis|clase))
        (el|ella) (le|se) ; a (el|ella|ellos)(?= ); le (duele|dolia|dio|ha dado|duelen|paso|pasa|
        dieron|salio|detectaron|operaron|diagnosticaron)
    """,
    "reports": """
        (dice*|dijo|dijeron|cree*|piensa*|pregunta*|pregunto|comenta*|comento|noto que|ve que|
        vio que|insiste*|asegura|
        preocupad*|quiere que|recomend*|aconsej*|sugir*|sugiere|opina)
    """,
    "writes_for": """
        soy (su|el|la) (marido|mujer|esposo|esposa|pareja|novio|novia|madre|padre|hermano|hermana|
        amigo|amiga|companer*|hijo|hija)
        (le |te )?escrib(o|e)~(por|en nombre|desde)~(el|ella|su); desde su (movil|telefono|celular)
    """,
    "me": """
        me; mi; mis; mio; mia; yo; conmigo; tengo; tuve; tenia; noto; note; siento; senti; estoy
        estaba; estuve; he; hice; hago
        voy; fui; puedo; podia; pude; cai; perdi; pierdo; vi; veo; llevo; creo; oi; sali; salgo
        soy; empece; acabe; quiero
        despierto; desperte; sudo; meo; mee; orino; tome; tomo; peso; hablo; respiro; vomite
        sangro; sangre
    """,
    "starts_me": "yo; me; tengo; noto; siento; estoy; he; tuve",
}
NEGATION = {
    "no": """
        no; sin; nada de; ni; ningun; ninguna; ninguno; nunca; jamas; tampoco; cero; ni rastro de
        niego; negativo; nada
    """,
    "not_negating": """
        no (paro|paraba|dejo|dejaba|hago mas que); de la nada; como si nada; para nada; casi nada
        nada (bien|buena|bueno|de aire|de fuerza|
        de sensibilidad)
        no (puedo|podia|pude|consigo|conseguia|logro|lograba|soy capaz|aguanto|soporto|responde*|
        me responde*|me deja*|deja*|para|paraba|cesa|
        baja|remite|mejora|cede|veo|vuelve|entra|sube|levanto|controlo|quiero|merece|vale|
        encuentro|tengo (fuerza*|ganas de vivir|tacto|
        sensibilidad|motivos|razones|control|equilibrio)|sabia|se (donde|que|por que|si|me (pasa|
        quita|iba|va|calma|pasaba|quitaba)|quita|pasa|va|calma|mueve|
        estira*|levanta)|me (sale*|salian|acuerdo|acordaba|obedec*|encuentro|recupero|entra|llega|
        siento (bien|la|el|los|las|mi)|noto (la|el|los|las|bien))|
        recuerdo|recordaba|siento (la|el|los|las|mi|mis|bien|nada en)|noto (la|el|los|las|mi|
        nada en)|es (normal|solo|broma|lo|muscular|agujetas)|
        esta (bien|en su|normal)|estoy (bien|nada bien|muy bien|fin*|segur*)|estaba bien|
        me va bien|va bien|solo|hace mas|pego|he (podido|pegado)|
        duermo|dormi|dormia|como|hay (manera|forma)|hago dieta|entiendo|exagero|le di|era (normal|
        solo|agujetas)|tenia (fuerza|sensibilidad)|
        sudaba|coordin*|parece (agujetas|muscular|normal)|queria|obstante)
        sin (fuerza*|sensibilidad|aire|aliento|respiracion|motivo*|razon|querer*|moverlo|moverme|
        mover*|hacer|poder|parar|apenas|explicacion|
        sentido|control|conocimiento|ganas|mi|tacto|resuello|darme|notar*|que|venir|hambre|
        apetito|dieta|proponermelo|saber|pulso|agarre|dormir|
        equilibrio|previo|avisar)
        ni (puedo|siquiera|idea|dormir|hablar|levantar*|mover*|sentad*|en reposo|de cona|cerrar|
        sujetar|coger)
        nunca (me )?(habia|he|tuve|lo) ?(tenido|sentido|notado|pasado|dolido)?~(asi|tan|igual|
        antes|esto|algo|parecid*)
        nada (mas|que ver|bien|funciona|lo|me (quita|calma)|normal|buen*|claro)
        no(?= ,)
    """,
    "barrier": """
        pero; aunque; solo; salvo; excepto; ahora; y (me|tengo|noto|siento|estoy|la|el|un|una|
        mucho|ahora|hoy|luego|ademas|no)
        desde; porque; luego; despues; sino; menos; aparte; eso si; en cambio; ya que; cuando; si
        que; con
    """,
    "list_word": "ni; o; u",
    "more_than": """
        (no (es|son|era|eran|parecen|parece|creo que sea|creo que sean)|mas que|distinto (a|de)|
        diferente (a|de)|
        nada que ver con|peor que)~(agujeta*|muscular*|cansancio|cargad*)
    """,
    "all_clear": "bien; genial; perfecto; normal; nada; ninguno; ninguna; no; tranquil*",
    "no_issue": "(ningun|sin|no es|nunca) (problema|issue|molestia|drama)",
    "hypothetical": """
        (y )?si (alguna vez|algun dia|me (diera|diese|pasara|pasase|doliera|saliera|mareara|
        desmayara)|tuviera|notara|sintiera)
        (paro|sigo|debo (parar|seguir)|deberia (parar|seguir)|tengo que parar|que hago|
        puedo seguir) si
        que (hago|debo hacer|pasa|pasaria) si; en caso de; por si (me|acaso|tengo); que sintomas
        cuales son los (signos|sintomas)
        (miedo|preocupa*|preocupad*) (de|a|por) (que|si|tener|sufrir|lesion*|dislocar*|romper*|
        desmay*)~
        (he )?(leido|lei|visto|vi|oido) (un|una|en|que|sobre|por)~(articulo|video|podcast|
        documental|internet|blog|noticia|pelicula|serie|libro)
        (articulo|video|podcast|documental|curso|charla|pelicula|libro|noticia|taller) (sobre|de|
        que)~; curso de primeros auxilios
        (puede|pueden|podria|podrian) (causar|provocar|dar|producir)~; para (evitar|prevenir|no)~
        riesgo de~; como (se|saber|prevenir|evitar)~
        no quiero (que me|acabar|tener|lesionar*|desmay*|dislocar*|romper*|hacerme)~
        no vaya a (ser|tener|dar*)~
    """,
}
TALK = {
    "medicine": """
        ibuprofeno*; paracetamol*; nolotil; naproxeno; voltaren; diclofenaco; antiinflamatorio*
        analgesic*; calmante*
        medicamento*; medicina*; medicacion; pastilla*; cortisona; corticoide*; infiltrac*
        antibiotico*; cbd; tramadol
        codeina; aspirina; relajante* muscular*; enantyum; dexketoprofeno; creatina; suplemento*
        pomada; crema; gelocatil
        termalgin; omeprazol; inyeccion
    """,
    "asking": """
        puedo; debo; deberia; podria; es (bueno|malo|seguro|normal|recomendable); cuant(o|a|os|
        as); que (tomo|me tomo|puedo|debo|deberia|
        es|sera|dosis|crema|hago); recomend*; me viene bien; (crees|pensais|piensas) que; sera
        puede ser; podria ser; tendre
        tengo que; hace falta; va bien; sirve; me tomo; que me pongo; que tengo; por que
    """,
    "condition": """
        desgarro; rotura; tendinitis; tendinopatia*; manguito*; pinzamiento*; bursitis; artritis
        artrosis; tunel carpiano
        codo de (tenista|golfista); epicondilitis; epitrocleitis; esguince*; fractur*; fisura
        hernia*; contractura*; labrum
        ligamento*; tendon*; inflamacion; infeccion; diagnostic*; ecografia; resonancia
        radiografia; lesion; luxacion
        angina; infarto; ictus; trombo*; rabdo*; contusion; pubalgia; sinovitis; capsulitis
    """,
}
TINGLE = {
    "numb": """
        hormigue*; cosquilleo*; dormid(o|a|os|as); se me (duerm*|durm*); adormec*; entumec*
        acorchad*; calambre*
    """,
    "hang": """
        colgad*; colgar*; colgand*; colgarme; cuelg*; suspension*; en la barra; de la barra; barra
    """,
    "passed": """
        se (me )?(paso|fue|quito|pasa|quita|va|ha pasado|ha ido|ha quitado|pasaba|
        quitaba)~(minuto*|segundo*|rato|momento|enseguida|
        seguida|rapido|al (bajar|soltar*|momento)|en nada|ya)
        (en|a los|al) (un |unos |pocos |dos )?(minuto*|segundo*) (se me |se |ya )?(paso|fue|quito|
        habia pasado|estaba bien|nada)
        ya (se me )?(paso|ha pasado|no lo tengo|esta bien); duro (un |unos |pocos )?(segundo*|
        minuto*)
    """,
    "no_weakness": """
        (con|tengo|mantengo|conservo) (toda )?(la )?fuerza( normal)?; fuerza (normal|bien|intacta|
        igual|ok|perfecta)
        sin (perdida de fuerza|debilidad|perder fuerza); no (he perdido|pierdo|perdi) fuerza
        agarre (normal|bien|perfecto)
    """,
}
SITES = {
    "site_neck": "cuello; cervical*; nuca",
    "site_shoulder_front": """
        (parte )?delant* del hombro*; hombro* (por )?delant*; frontal del hombro
        deltoides anterior
    """,
    "site_shoulder_top": """
        (parte (de )?arriba|encima|alto) del hombro; hombro* (por )?(arriba|encima); acromio*
    """,
    "site_shoulder_back": """
        (parte )?(de )?(detras|trasera|posterior|atras) del hombro*; hombro* (por )?(detras|
        atras); deltoides posterior
    """,
    "site_upper_arm": "biceps; triceps; parte alta del brazo",
    "site_elbow_outer": """
        (parte )?(externa|exterior|fuera|de fuera) del codo*; codo* (por )?(fuera|
        la parte de fuera|externo)
    """,
    "site_elbow_inner": """
        (parte )?(interna|interior|dentro|de dentro) del codo*; codo* (por )?(dentro|
        la parte de dentro|interno)
    """,
    "site_elbow_back": """
        (parte )?(de )?(detras|trasera|posterior|atras|punta) del codo*; codo* (por )?(detras|
        atras)
    """,
    "site_forearm": "antebrazo*",
    "site_wrist": "muneca*",
    "site_hand": "mano; manos; dedo; dedos; pulgar*; palma; nudillo*; menique",
    "pec": "pectoral*; musculo* del pecho",
    "site_upper_back": """
        espalda alta; alta de la espalda; omoplato*; escapula*; paletilla*; entre los omoplatos
    """,
    "side_left": "izquierd*; izq; izda; izdo",
    "side_right": "derech*; dcha; dcho; der",
    "side_both": "ambos; ambas; los dos; las dos",
    "pain_words": """
        fastidi*; tocad*; tonto; tonta; resentid*; dolor*; duele*; dolia*; dolio; doliendo
        dolid*; molestia*; molesta*; pinchazo*; punzada*; pincha; me mata; lastim*; se queja
        quejand*; resient*; tiron*; pinchand*; me hice dano
    """,
    "no_report": """
        agujeta*; cargad*; congestion*; bombe*; content*; fuerte*; bien; genial; curad*
        hace anos; de (chico|chica|pequen*|nino|nina)
        en (19|20)[0-9]{2}; ya no; operad*; nunca mas; como (coloco|pongo|apoyo|agarro|cojo)
        debo; tengo que; se supone; que hago si
        tecnica; postura; es normal; cartera; bolsillo; sin (dolor|molestias)
    """,
    "everyday": """
        (abrir|abriendo|abro|girar|giro|desenrosc*)~(frasco|bote|tarro|botella|puerta|llave|grifo|
        tapa|picaporte)
        (poner|ponerme|pongo|quitar|quitarme|poniendome)~(abrigo|chaqueta|camiseta|sujetador|
        cinturon|calcetin*|jersey|mochila)
        (lavar*|cepill*|lavo)~(dientes|pelo|espalda); peinar*; peino; escribir; teclear; teclado
        raton; conducir; manejar
        (coger|cojo|levantar|levanto|cargar|cargo|llevar|agarrar|agarro|sostener)~(taza|vaso|
        sarten|bolsa|bolsas|compra|nino|nina|bebe|movil|plato|botella)
        vestirme; dar la mano; cocinar; en el trabajo; dia a dia; vida diaria; en casa
    """,
    "stopped_set": """
        (tuve|tuvo|he tenido|tenido|toco|me hizo|obligo a) (que )?(parar|dejar*|soltar*|bajar*|
        cortar*|abandonar)
        (pare|corte|deje|solte|abandone|baje)~(serie|antes|por|a mitad|mitad)
        no pude (terminar|acabar|seguir|completar)
    """,
    "sudden_sharp": """
        (tiron|pinchazo|dolor|latigazo|punzada|duele|dolio)~(de golpe|de repente|de pronto|brusc*|
        seco|subit*)
        dolor (agudo|subito|repentino|punzante); (de repente|de golpe|de pronto)~(dolor|pinchazo|
        duele|dolio|tiron|punzada)
        (pinchazo|tiron|latigazo|punzada|dolor) (fuerte|seco|brusco|agudo|muy fuerte|
        tremendo)*(?= |$); pinchazo
    """,
}
