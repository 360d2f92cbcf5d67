"""The Spanish words that carry meaning in a reply, without accents."""

from collections.abc import Mapping

from bot.reading.words import Mark

PHRASES: Mapping[Mark, str] = {
    Mark.TIMES: "x|por|veces",
    Mark.AT: "con|usando|con las|con la|con los|subi a|baje a|pase a",
    Mark.AND: "y|e|luego|despues|y luego|y despues|y por ultimo|seguido de|y al final|entonces|"
    "y entonces",
    Mark.OR: "a|o|entre",
    Mark.ALL: "todas|todos|cada serie|todas las series|en todas|en cada serie|en todas las series|"
    "cada vez|por serie|en cada una|todas iguales|las tres|los tres|las tres series|cada ronda|"
    "las dos|las dos series|las cuatro|las cuatro series|todas a|todas de|en las tres|"
    "en las tres series",
    Mark.EACH: "cada una|cada uno|c u|cada",
    Mark.EACH_SIDE: "cada lado|por lado|cada brazo|por brazo|ambos lados|ambos|ambas|cada mano|"
    "por mano|los dos lados|ambos brazos|en cada lado|en cada brazo|con cada brazo|"
    "con cada mano|los dos brazos|con los dos brazos|igual en los dos lados|en ambos lados|"
    "igual los dos lados|lo mismo en los dos lados|de cada lado|a cada lado|"
    "izquierda y derecha|izquierdo y derecho|lado y lado|ambas manos|por cada lado",
    Mark.LEFT: "izq|izquierda|izquierdo|lado izquierdo|brazo izquierdo|mano izquierda|iz|izda|"
    "izqda|con la izquierda|con el izquierdo|la izquierda|el izquierdo|i|a la izquierda|izdo",
    Mark.RIGHT: "der|dcha|derecha|derecho|lado derecho|brazo derecho|mano derecha|dr|dcho|"
    "con la derecha|con el derecho|la derecha|el derecho|d|a la derecha|drcha",
    Mark.SET: "serie|ronda|set",
    Mark.SETS: "series|rondas|vueltas|sets|tandas",
    Mark.STOPPED: "pare|tuve que parar|me detuve|lo deje|sin la ultima|y pare|abandone|pare ahi|"
    "ahi pare|me pare|lo deje ahi|y lo deje|sin tercera|no hice la ultima|no hice la tercera|"
    "no pude con la ultima|no pude con la tercera|no pude hacer la ultima|"
    "no pude hacer la tercera|me salte la ultima|me salte la tercera|corte ahi|corte|y ya|"
    "y ya esta|deje la ultima|la ultima no|la tercera no|la ultima no la hice|"
    "la tercera no la hice|no aguante|ya no aguante|no aguante mas|ya no aguante mas|"
    "tuve que dejarlo|tuve que cortar|ya no pude mas|no pude mas|"
    "y no pude mas|tire la toalla|la ultima no pude|la tercera no pude|sin la tercera|"
    "la ultima serie no la hice|no hice la ultima serie|y para casa|me rendi|ahi lo deje",
    Mark.ONLY: "solo|solamente|nada mas|unicamente|nomas|solo hice|solo pude|solo me salieron",
    Mark.PLANNED: "como estaba previsto|segun lo previsto|como previsto|lo previsto|segun el plan|"
    "como estaba planeado|como planeado|segun lo planeado|lo planeado|segun plan|"
    "tal como estaba|tal cual|como ponia|como pone|como dice|como decia|segun lo indicado|"
    "como indicado|lo que tocaba|lo que ponia|como estaba escrito|como mandaste|"
    "como en el plan|lo pautado|segun lo pautado|como estaba pautado|a lo previsto|"
    "conforme al plan|de acuerdo al plan|tal y como estaba|tal y como ponia|como toca|"
    "como tocaba|como estaba|lo programado|segun lo programado|como estaba programado|"
    "tal como estaba previsto|como decia el plan|como dice el plan|como marca el plan|como el plan|"
    "lo del plan|como marcaba el plan|"
    "tal y como estaba previsto|como lo planeado|todo segun el plan",
    Mark.DONE: "hecho|hecha|terminado|terminada|listo|lista|hechas|hechos|completado|completada|"
    "completo|completa|acabado|acabada|ya esta|cumplido|ya hice|termine|acabe",
    Mark.EVERYTHING: "todo|toda la sesion|la sesion entera|entera|toda|todo el entreno|"
    "todo el entrenamiento",
    Mark.REST: "todo lo demas|lo demas|el resto|todo el resto|los demas|las demas|resto|"
    "los otros|las otras|el resto de la sesion",
    Mark.SAME: "igual|lo mismo|idem|misma|mismo|otra vez igual|iguales|igual que antes",
    Mark.SKIPPED: "me salte|no hice|saltado|saltada|salto|me la salte|me lo salte|no la hice|"
    "no lo hice|sin hacer|saltar|lo salto|la salto|me salto|omito|omitido|omitida|no hecho|"
    "no hecha|deje fuera|paso de|no me dio tiempo a|no me dio tiempo|no llegue a|salte|"
    "no he hecho|no pude hacer|este no|esta no|este no lo hice|esta no la hice|salteado|"
    "me salteo|no realice|no toque|la deje fuera|lo deje fuera|no hago|no puedo hacer|"
    "no voy a hacer|no me dio tiempo al|no me dio tiempo de",
    Mark.BUT: "pero|excepto|menos|salvo|menos la|menos el|excepto la|quitando|"
    "a excepcion de|aparte de|con excepcion de",
    Mark.ABOUT: "unos|unas|aprox|aproximadamente|mas o menos|alrededor de|como unos|quiza|"
    "quizas|creo|creo que|diria|diria que|sobre|cerca de|tal vez|a lo mejor|o asi|puede que|"
    "yo diria|yo diria que|calculo|calculo que|masomenos",
    Mark.RISKY: "casi|deberia|quiero|queria|antes|ella|amigo|amiga|hijo|hija|sin|menos de|mas de|"
    "objetivo|meta|la semana pasada|semana pasada|la ultima vez|ultima vez|el mes pasado|"
    "todavia no|aun no|intente|intento|intentar|intentando|no pude|no llegue|no consegui|"
    "no logre|no se|"
    "no recuerdo|no me acuerdo|no estoy seguro|no estoy segura|hermano|hermana|mujer|marido|"
    "novio|novia|companero|companera|colega|dijo|dice|dijiste|tocaba|tocaban|tocan|toca|puse|"
    "tenia que|habia que|suelo|normalmente|record|marca|mejor marca|peso|pesaba|kilometros por|"
    "metros por|pies|pulgadas|millas|yardas|pasos|pisos|anos|semanas|dias|meses|personas|"
    "la tarde|de la tarde|de la manana|pulsaciones|ppm|grados|calorias|dormi|horas de sueno|"
    "calentamiento|calente|descanso|descanse|descansando|entre series|doble|mitad|por ciento|"
    "bajo cero|negativo|si hago|si pudiera|podria|puedo|queria hacer|en total|total|media de|"
    "promedio|en lugar de|en vez de|hace|peor que|mejor que|menos que|mas que|"
    "nunca|ellos|ellas|nosotros|alguien|video|telefono|numero es|previsto|plan|"
    "planeado|pautado|fallo la|fallado|falle",
    Mark.LATER: "manana|proxima|proximo|la proxima|proxima vez|la proxima vez|la semana que viene|"
    "voy a|vamos a|hare|ire|a ver si|nos vemos|esta noche|luego hago|mas tarde|espero|"
    "intentare|quisiera|pronto|hasta luego|hasta manana",
    Mark.NOT: "no|tampoco|ni|que va",
    Mark.COULD: "podria haber hecho|podia haber hecho|podria haber aguantado|podia haber aguantado|"
    "hubiera podido hacer|habria podido hacer|podia hacer|podria hacer|podria haber sacado|"
    "hubiera hecho|habria hecho|pude haber hecho|me quedaban|me quedaba|quedaban|me sobraban|"
    "me sobraba|sobraban|podria haber tirado|hubiera aguantado|habria aguantado|me quedaron|"
    "podria haber seguido|podia|podria|"
    "podia haber sacado|me faltaban para el fallo|quedaba",
    Mark.MORE: "mas|repes mas|reps mas|segundos mas|repeticiones mas|extra|o mas|repe mas|otra mas",
    Mark.AT_LEAST: "al menos|por lo menos|como minimo|minimo",
    Mark.HALF: "media|medio",
    Mark.WITHDRAWN: "olvidalo|dejalo|da igual|no importa|no pasa nada|nada nada|es igual",
    Mark.EXERCISE: "ejercicio|movimiento|ejercicios",
    Mark.BECAUSE: "porque|por culpa|por culpa de|ya que|a causa de|debido a|pq|xq|porq",
    Mark.BAND: "banda|goma|bandas|gomas",
    Mark.SORRY: "perdon|correccion|error|perdona|disculpa|disculpas|espera|me equivoque|"
    "me he equivocado|ups|uy|corrijo|corrige|lo siento|rectifico|errata|fallo mio|"
    "estaba mal|esta mal|mal escrito|me confundi|en realidad|realmente|en verdad",
    Mark.MEANT: "queria decir|quise decir|eran|era|fueron|en realidad eran|en realidad fueron|"
    "en realidad fue|en realidad era|deberia ser|debia ser|quiero decir|queria poner|"
    "debe ser|tendria que ser|tenia que ser|seria|serian|es decir",
    Mark.UNDO: "deshacer|borra eso|borralo|borrar|borra|deshaz|deshazlo|anula|anular|"
    "anulalo|borra lo ultimo|borra el ultimo|quita eso|quitalo|elimina eso|eliminalo|elimina|"
    "cancela eso|cancelalo|borra la ultima|anula eso|anula lo ultimo|ignora eso|"
    "deshacer lo ultimo|deshaz lo ultimo|ignora lo ultimo|olvida lo ultimo|borrar lo ultimo|"
    "olvida eso|borra el mensaje|ignora el mensaje anterior|quita lo ultimo|borra lo anterior",
    Mark.OTHER_ARM: "otro brazo|el otro brazo|otro lado|el otro lado|era el otro brazo|"
    "fue el otro brazo|era el otro lado|la otra mano|otra mano|brazo equivocado|"
    "lado equivocado|al reves|me equivoque de brazo|me equivoque de lado|era al reves|"
    "era con el otro brazo|con el otro brazo|fue el otro lado|era la otra mano",
    Mark.EFFORT: "esfuerzo|rpe|intensidad|dificultad|de esfuerzo|esfuerzo percibido|"
    "esfuerzo total|esfuerzo general",
    Mark.LEFT_OVER: "en reserva|mas en reserva|de reserva|reserva|rir|en el tanque|"
    "en la recamara|repes en reserva|reps en reserva|repeticiones en reserva|"
    "segundos en reserva|de margen|de sobra|en la reserva|de recamara|en el deposito|"
    "en la manga|mas en el tanque|repeticiones mas en reserva|repes de margen",
    Mark.NOTHING_LEFT: "nada en reserva|al fallo|hasta el fallo|sin reserva|nada mas en reserva|"
    "no me quedaba nada|no quedaba nada|ni una mas|vacio|a tope|no podia mas|"
    "ninguna en reserva|al limite|no me quedaba ninguna|nada de reserva|ya no me quedaba nada|"
    "no me quedo nada|no podia ni una mas|cero en reserva",
    Mark.NONE: "ninguno|ninguna|nada|ningun|nada de nada",
    Mark.YES: "si|vale|claro|por supuesto|sip|sii|correcto|exacto|de acuerdo|claro que si|"
    "eso es|asi es|si si",
    Mark.PAIN: "dolor|dolores|duele|duelen|dolia|dolian|dolio|me duele|me duelen|me dolia|"
    "me dolio|molesta|molestia|molestias|molestan|molestaba|pinchazo|pinchazos|dolorido|"
    "dolorida|doloridos|doloridas|tiron|pinzamiento|me molesta|me molestan|"
    "me molestaba|un tiron|resentido|resentida|inflamado|inflamada|ardor|"
    "punzada|punzadas|hormigueo|rigido|rigida|tieso|me esta matando|"
    "fastidia|me fastidia|da guerra|me da guerra|resiente|me ha molestado|ha molestado|"
    "ha dolido|me ha dolido|moleston|dolorcillo|molestandome|doliendo|pinchaba|pincha|"
    "me tira|me pincha|incomoda|incomodidad|entumecido|entumecida|adormecido|adormecida",
    Mark.NO_PAIN: "sin dolor|no duele|no me duele|nada de dolor|no hay dolor|ningun dolor|"
    "no dolor|no me duele nada|sin dolores|sin molestias|ninguna molestia|no me dolio|"
    "no me dolio nada|no me molesta|cero dolor|no tengo dolor|sin ningun dolor|"
    "sin ninguna molestia|no duele nada|nada duele|dolor cero|dolor ninguno|dolor no|"
    "no me dolia nada|no he tenido dolor|no tengo molestias|no me molesta nada|"
    "no ha dolido|no me ha dolido|no me ha dolido nada|nada me duele|sin problema|"
    "sin problemas|no me duele ya|ya no duele|ya no me duele|no molesta|no molesto",
    Mark.SORE: "agujetas",
    Mark.SHARP: "agudo|aguda|de repente|punzante|repentino|subito|chasquido|crujido",
    Mark.FINE: "bien|esta bien|doblados|perfecto|perfecta|mejor|genial|estaba bien|va bien|"
    "sin novedad|muy bien|fue bien|ha ido bien|bastante bien|mucho mejor|como nueva|"
    "como nuevo|recta|recto|rectos|flexionado|flexionados|munequera|munequeras|codera",
    Mark.PART: "externo|interno|exterior|interior|externa|interna|de delante|delantera|delantero|"
    "por fuera|por dentro|por delante|por detras|de atras|trasero|trasera|posterior|anterior|"
    "parte de atras|parte delantera|parte externa|parte interna|frontal|arriba|parte alta|"
    "cara interna|cara externa|superior|parte de arriba|parte de delante|parte trasera",
    Mark.CANT: "no puedo|hoy no puedo|hoy no|no podre|no puedo hoy|no puedo entrenar|"
    "hoy no entreno|no entreno hoy|hoy no voy a poder|no voy a poder|hoy imposible|"
    "imposible hoy|hoy me es imposible|hoy me salto|me salto el de hoy|me salto la de hoy|"
    "hoy descanso|hoy paso|no pude entrenar|hoy no pude|hoy me toca saltar|"
    "me salto la sesion|me salto el entreno|hoy no podre|no llego hoy|hoy no llego|"
    "me salto la sesion de hoy|me salto el entreno de hoy|hoy no va a poder ser|"
    "hoy no puede ser|hoy no hay entreno|no voy a entrenar|no voy a entrenar hoy|"
    "hoy no voy a entrenar|no hare la sesion|hoy no hago la sesion|hoy no hago nada|"
    "hoy no hare la sesion|no puedo hacer la sesion|no puedo hacer el entreno|"
    "hoy no puedo entrenar|imposible entrenar|imposible entrenar hoy|hoy salto",
    Mark.ILL: "enfermo|enferma|fiebre|gripe|resfriado|resfriada|catarro|"
    "gastroenteritis|me encuentro mal|no me encuentro bien|estoy fatal|constipado|constipada|"
    "covid|vomitos|vomitando|me siento mal|migrana|estoy malo|estoy mala|pachucho|pachucha|"
    "anginas|indispuesto|indispuesta|griposo|griposa|tengo gripe|tengo fiebre|diarrea|"
    "no me siento bien|con gripe|con fiebre",
    Mark.TRAVELLING: "de viaje|viajando|viaje|vacaciones|de vacaciones|aeropuerto|"
    "en el aeropuerto|avion|en el avion|en el tren|fuera de casa|fuera por trabajo|hotel|"
    "en un hotel|de camino|en carretera|fuera de la ciudad|vuelo",
    Mark.NO_TIME: "sin tiempo|no tengo tiempo|ocupado|ocupada|mucho trabajo|liado|liada|"
    "trabajo hasta tarde|no me da tiempo|reunion|reuniones|no me da la vida|hasta arriba|"
    "me falto tiempo|falta de tiempo|poco tiempo|no tuve tiempo|a tope de trabajo|"
    "hasta arriba de trabajo|no he tenido tiempo|no hay tiempo|examenes|"
    "no tengo tiempo hoy|salgo tarde|salgo tarde del trabajo|guardia|turno doble",
    Mark.NO_EQUIPMENT: "sin gimnasio|sin material|sin equipo|sin barra|gimnasio cerrado|"
    "el gimnasio esta cerrado|no tengo material|no tengo gimnasio|sin pesas|no tengo pesas|"
    "no tengo equipo|no hay gimnasio|no tengo barra|sin mancuernas|no tengo mancuernas|"
    "esta cerrado el gimnasio|no tengo donde|no tengo las pesas|no tengo acceso al gimnasio|"
    "cerrado el gimnasio|gym cerrado|no hay barra|no hay material|el gimnasio cerrado|"
    "ha cerrado el gimnasio|no tengo con que|no tengo gomas|sin gomas|no hay pesas|"
    "sin mi material|el gym esta cerrado|no tengo las gomas|no tengo kettlebell",
    Mark.ACTIVITY: "nade|nadar|corri|correr|clase|bici|escalada|escale|lucha|yoga clase|caminata|"
    "partido|natacion|futbol|tenis|padel|baloncesto|boxeo|senderismo|bicicleta|"
    "anduve|camine|caminar|yoga|remo en maquina|esqui|esquie|surf|surfee|voleibol|ciclismo|"
    "trote|trotar|paseo en bici|piragua|kayak|baile|bailar|rocodromo|boulder|"
    "jugue|entreno con el equipo|entrenamiento con el equipo|artes marciales|monte|"
    "excursion|crossfit|pilates|spinning|eliptica|he nadado|he corrido|"
    "sali a correr|rodaje|hice bici|senderismo|caminando|corriendo|nadando|escalando|"
    "salida en bici|balonmano|judo|karate|rugby|patinaje|golf",
    Mark.NOW: "sesion de hoy ya|la sesion ahora|sesion ahora|la sesion de hoy ya|"
    "la sesion de hoy ahora|mandame la sesion|enviame la sesion|mandame la sesion de hoy|"
    "enviame la sesion de hoy|quiero la sesion ahora|puedo hacer la sesion ahora|"
    "quiero entrenar ahora|quiero entrenar ya|entreno ahora|entrenar ahora|"
    "la sesion de hoy por favor|mandamela ya|mandame la sesion ya|dame la sesion|"
    "dame la sesion ya|dame la sesion de hoy|puedo entrenar ahora|puedo entrenar ya|"
    "puedes mandar la sesion|puedes mandarme la sesion|puedes enviarme la sesion|"
    "puedes mandarme la sesion de hoy|puedes enviarme la sesion de hoy|"
    "la sesion antes|puedo hacer ya la sesion|puedo hacer la sesion de hoy ahora|"
    "quiero la sesion de hoy ahora|quiero la sesion de hoy ya|empezar ya|empezar ahora|"
    "mandame la sesion ahora|mandame la sesion de hoy ya|mandame la sesion de hoy ahora|"
    "me mandas la sesion|me mandas la sesion de hoy|me mandas la sesion ahora|"
    "la sesion ya|dame el entreno|dame el entreno de hoy|mandame el entreno|"
    "mandame el entreno de hoy|mandame el entrenamiento de hoy|dame el entrenamiento de hoy|"
    "listo para entrenar|lista para entrenar|el entreno ya|el entreno ahora",
    Mark.FILLER: "de|del|la|el|los|las|en|a la|mi|un poco|hice|hoy|fue|aguante|he|estoy|es|"
    "al|mis|lo|le|se|me|ha|han|que|hecho unos|saque|consegui|logre|llegue a|tengo|tuve|"
    "tenido|muy|bastante|este|esta|estos|estas|ese|esa|eso|son|fueron de|hago|hecho los|"
    "para|por favor|ha sido|han sido|sido|salieron|me salieron|salio|sali|quedaron|estuve|"
    "estuvo|aguantado|aguantando|pude|nivel|un total de|con un|fui|nivel de|sesion|"
    "entrenamiento|entreno|como un|como|asi|pues|bueno|aqui|aqui van|ahi|ahi van|van|va|"
    "resultados|resultado|numeros|hacer|haciendo|los numeros|puntuacion|diria un|le doy un|"
    "le doy|le pongo|le pongo un|pongo|de dolor|colgado de|he hecho|hemos|hubo|habia|dia|"
    "acabe con|termine con|empece con|ahora mismo",
    Mark.CHAT: "hola|buenas|buenos dias|buenas tardes|buenas noches|entrenador|entrenadora|coach|"
    "gracias|muchas gracias|jaja|jajaja|jeje|facil|dificil|duro|dura|pesado|pesada|ligero|"
    "cansado|cansada|muerto|muerta|fuerte|agotado|agotada|reventado|reventada|costo|"
    "me costo|costaron|me ha costado|con buena tecnica|tecnica|agarre|manos|barra|suelo|"
    "resbaladiza|sudor|calor|frio|casa|en casa|gimnasio|todavia|aun|ya|tambien|ademas|"
    "hoy bien|contento|contenta|genial hoy|buen dia|mal dia|controlado|controlada|lento|"
    "lenta|rapido|rapida|limpio|limpia|limpias|limpios|de sobra bien|al final|animo|vamos|"
    "venga|uf|uff|buf|ay|ostras|tio|tia|amigos|cuesta|costoso|suave|comodo|comoda|"
    "apretando|ultimo|sufriendo|sufri|mucho|mucha|poco|poca|demasiado|super|esfuerzo fue alto|"
    "me senti|me siento|sentia|fuerte hoy|sensaciones|buenas sensaciones|progreso|mejorando|"
    "ganas|sueno|noche|tarde|hecho polvo|temblando|tiemblo|bestial|brutal",
    Mark.SECONDS: "s|seg|segs|segundo|segundos|sg|sgs|segundito|segundos de",
    Mark.MINUTES: "min|mins|minuto|minutos|minutillo",
    Mark.HOURS: "h|hr|hrs|hora|horas",
    Mark.KG: "kg|kgs|kilo|kilos|k|kilogramos|kilogramo",
    Mark.LB: "lb|lbs|libra|libras",
    Mark.METRES: "m|mts|metro|metros|mt",
    Mark.KILOMETRES: "km|kms|kilometro|kilometros",
    Mark.REPS: "rep|reps|repeticion|repeticiones|repes|repe",
    Mark.BODYWEIGHT: "peso corporal|pc|bw|con mi peso|sin lastre|peso propio",
}
ORDINALS: Mapping[str, int] = {
    phrase: number
    for number, phrases in {
        1: "primera|primero|primera serie|la primera|el primero|primer|la primera serie",
        2: "segunda|segunda serie|la segunda|el segundo|la segunda serie|segundo set",
        3: "tercera|tercera serie|la tercera|el tercero|tercer|la tercera serie|tercero",
        4: "cuarta|cuarta serie|la cuarta|cuarto|la cuarta serie",
        5: "quinta|quinta serie|la quinta|quinto",
        6: "sexta|la sexta|sexto",
        -1: "ultima|ultima serie|la ultima|el ultimo|la ultima serie|la ultima fue|ultimo",
        -2: "ultimas dos|las dos ultimas|las ultimas dos|dos ultimas|las 2 ultimas|ultimas 2",
    }.items()
    for phrase in phrases.split("|")
}
NOT_ENGLISH = frozenset({"he", "son", "a", "come", "pare", "once", "me", "so", "as", "no one"})
"""English words that mean something else to a Spanish speaker."""
