"""Spanish for the safety texts of an athlete: English template to Spanish, in one place.

The rest of the bot follows with a catalogue of messages; until then a text that is not here stays
in English. A template's ``{names}`` are the same in both languages: a test holds that.
"""

from collections.abc import Mapping

PLACES: Mapping[str, str] = {
    "neck": "cuello",
    "front of the shoulder": "parte delantera del hombro",
    "top of the shoulder": "parte alta del hombro",
    "back of the shoulder": "parte trasera del hombro",
    "upper arm": "parte alta del brazo",
    "outside of the elbow": "cara externa del codo",
    "inside of the elbow": "cara interna del codo",
    "back of the elbow": "parte trasera del codo",
    "forearm": "antebrazo",
    "wrist": "muñeca",
    "hand": "mano",
    "chest muscle": "músculo del pecho",
    "upper back": "espalda alta",
    "elsewhere": "otro lugar",
    "left {place}": "{place}, lado izquierdo",
    "right {place}": "{place}, lado derecho",
    "both sides, {place}": "{place}, ambos lados",
    "Neck": "Cuello",
    "Shoulder, front": "Hombro, delante",
    "Shoulder, top": "Hombro, arriba",
    "Shoulder, back": "Hombro, detrás",
    "Upper arm": "Brazo, parte alta",
    "Elbow, outside": "Codo, por fuera",
    "Elbow, inside": "Codo, por dentro",
    "Elbow, back": "Codo, detrás",
    "Forearm": "Antebrazo",
    "Wrist": "Muñeca",
    "Hand": "Mano",
    "Chest muscle": "Músculo del pecho",
    "Upper back": "Espalda alta",
    "Somewhere else": "En otro lugar",
    "overhead work": "trabajo por encima de la cabeza",
    "weight on a bent-back wrist": "peso sobre la muñeca doblada hacia atrás",
    "gripping": "agarrar",
    "bending the elbow under load": "doblar el codo con carga",
    "straightening the elbow under load": "estirar el codo con carga",
    "the arm behind the body under load": "el brazo detrás del cuerpo con carga",
    "the arm across the body": "el brazo cruzado por delante",
    "rotation at its end": "giro al final del recorrido",
    "hanging and heavy carrying": "colgarse y cargar peso",
    "catching and landing on the hands": "caer o frenar con las manos",
    "head-down positions": "posiciones cabeza abajo",
    "load on the neck": "carga sobre el cuello",
    "holds": "posiciones sostenidas",
    "repetitions": "repeticiones",
    "carries": "cargas caminando",
    "vertical push": "empuje vertical",
    "horizontal push": "empuje horizontal",
    "dips and supports": "fondos y apoyos",
    "vertical pull": "tracción vertical",
    "horizontal pull": "tracción horizontal",
    "shrugs and carries": "encogimientos y cargas",
    "all upper-body training": "todo el entrenamiento del tren superior",
    "{what} (left)": "{what} (izquierda)",
    "{what} (right)": "{what} (derecha)",
}
REPORTS: Mapping[str, str] = {
    "Where does it hurt? If it is bad or frightening, call for help first.": (
        "¿Dónde te duele? Si es fuerte o te asusta, pide ayuda primero."
    ),
    "{place}: which side?": "{place}: ¿qué lado?",
    "{place}: how much, 0 to 10? 0 is nothing, 10 is the worst you can think of.": (
        "{place}: ¿cuánto, de 0 a 10? 0 es nada, 10 es lo peor que puedes imaginar."
    ),
    "{place}: is any of this so?": "{place}: ¿pasa algo de esto?",
    "One more check. Is any of this new or unusual for you?": (
        "Una pregunta más. ¿Hay algo de esto nuevo o raro para ti?"
    ),
    "Good morning. Your {place} today, 0 to 10?": "Buenos días. ¿{place} hoy, de 0 a 10?",
    "Noted, {place}. Nothing changes.": "Anotado, {place}. No cambia nada.",
    "Noted, {place}{score}. Nothing changes today.": (
        "Anotado, {place}{score}. Hoy no cambia nada."
    ),
    "Noted, {place}{score}. What loads it is made easier or shorter for now, "
    "and does not get harder until it has settled.": (
        "Anotado, {place}{score}. Lo que lo carga se hace más fácil o más corto por ahora. "
        "No sube hasta que se calme."
    ),
    "We leave out what loads your {place} until {coach} has looked. "
    "The rest goes on. If it gets worse or worries you, "
    "see a doctor or physiotherapist.": (
        "Quitamos lo que carga esta zona hasta que {coach} lo mire: {place}. "
        "El resto sigue. Si empeora o te preocupa, ve a un médico o fisioterapeuta."
    ),
    "We leave out what loads your {place}. Please have it looked at by a doctor "
    "or physiotherapist. {coach} is told.": (
        "Quitamos lo que carga esta zona: {place}. Que la vea un médico o fisioterapeuta, "
        "por favor. {coach} recibe el aviso."
    ),
    " {score} of 10": " {score} de 10",
    "{place}{score}": "{place}{score}",
    "Left out for now: {what}. {coach} can bring it back, once it has been looked at.": (
        "Fuera por ahora: {what}. {coach} puede devolverlo cuando se haya mirado."
    ),
    "All sessions are stopped. If you have not been helped yet, or it comes back, call "
    "{number} now. Nobody may be watching this chat. "
    "{coach} can let you start again once you have been looked at.": (
        "Todas las sesiones están paradas. Si aún no te han ayudado, o vuelve, llama al "
        "{number} ahora. Puede que nadie mire este chat. "
        "{coach} puede dejarte empezar de nuevo cuando te hayan visto."
    ),
    "No session today: we wait until you have been looked at by a doctor "
    "or physiotherapist, and {coach} has heard. Write to me if anything changes.": (
        "Hoy no hay sesión. Esperamos a que te vea un médico o fisioterapeuta, "
        "y a que {coach} lo sepa. Escríbeme si algo cambia."
    ),
    "No session today: what is planned loads what hurts. {coach} is looking at it.": (
        "Hoy no hay sesión: lo previsto carga lo que duele. {coach} lo está mirando."
    ),
    " That spares what you reported: {places}.": " Así se cuida lo que dijiste: {places}.",
    "From today's session, leave out: {names}.{because} The rest stands. "
    "{coach} can bring it back.": (
        "De la sesión de hoy, deja fuera: {names}.{because} El resto sigue. "
        "{coach} puede devolverlo."
    ),
    "Instead today:": "En su lugar, hoy:",
    "Back in today's session: {names}. Only if you feel well.": (
        "Vuelve a la sesión de hoy: {names}. Solo si te encuentras bien."
    ),
    "Easier for the rest of today:": "Más fácil para el resto de hoy:",
    "Thank you. It has settled, so training goes on as planned.": (
        "Gracias. Se ha calmado, así que el entrenamiento sigue como estaba previsto."
    ),
    "Good, nothing hurt.": "Bien, no dolió nada.",
    "It came suddenly and sharp": "Vino de golpe y agudo",
    "It stopped a set": "Cortó una serie",
    "It disturbs everyday things": "Molesta en la vida diaria",
    "Chest, breath or heartbeat": "Pecho, respiración o latido",
    "Head or neck, fainting": "Cabeza o cuello, desmayo",
    "Numb, weak, cannot lift it": "Dormido, sin fuerza, no se levanta",
    "Out of shape, a pop, a fall": "Deformado, un chasquido, una caída",
    "Swollen, hot, fever, dark urine": "Hinchado, caliente, fiebre, orina oscura",
    "At night, or feeling ill": "De noche, o me siento mal",
    "None of these": "Nada de esto",
    "Left": "Izquierdo",
    "Right": "Derecho",
    "Both": "Los dos",
    "Something hurts": "Algo me duele",
}
SIGNS: Mapping[str, str] = {
    "your local emergency number": "tu número local de emergencias",
    "Please stop now. Call {number} now, or have somebody call. "
    "Do not wait for an answer here: nobody may be watching this chat. "
    "{coach} is being told. All sessions stop.": (
        "Para ahora, por favor. Llama al {number} ahora, o que llame alguien. "
        "No esperes respuesta aquí: puede que nadie mire este chat. "
        "{coach} recibe el aviso. Se paran todas las sesiones."
    ),
    "Pressure or tightness inside, or with breathlessness, sweating, arm or jaw: "
    "call {number} now. Soreness of the muscle when you press or move it: tap here. "
    "Stop training until this is clear.": (
        "Presión u opresión por dentro, o con falta de aire, sudor, brazo o mandíbula: "
        "llama al {number} ahora. Molestia del músculo al apretarlo o moverlo: toca aquí. "
        "No entrenes hasta que esté claro."
    ),
    "Please stop. {question} If yes, or if you are unsure, call {number} now. "
    "Nobody may be watching this chat.": (
        "Para, por favor. {question} Si es que sí, o tienes dudas, llama al {number} ahora. "
        "Puede que nadie mire este chat."
    ),
    "Please stop for now. {question} {coach} is told either way.": (
        "Para por ahora, por favor. {question} {coach} recibe el aviso en todo caso."
    ),
    "Yes, or not sure": "Sí, o no lo sé",
    "No": "No",
    "Yes": "Sí",
    "Yes, or it came back": "Sí, o ha vuelto",
    "No, gone within minutes": "No, se fue en minutos",
    "No, that is not what I meant": "No, no quería decir eso",
    "Inside, or not sure": "Por dentro, o no lo sé",
    "The muscle, when I press or move it": "El músculo, al apretarlo o moverlo",
    "Thank you, noted. If that changes, stop and get help. {coach} can see your answer.": (
        "Gracias, anotado. Si cambia, para y pide ayuda. {coach} puede ver tu respuesta."
    ),
    "That is passed on already. Only a person can take it back. If you feel worse, get help now.": (
        "Eso ya está avisado. Solo una persona puede retirarlo. Si te sientes peor, pide ayuda ya."
    ),
    "That is a question for a pharmacist, a doctor or a physiotherapist. "
    "I cannot answer it. {coach} sees that you asked.": (
        "Esa pregunta es para un farmacéutico, un médico o un fisioterapeuta. "
        "Yo no puedo responderla. {coach} ve que la has hecho."
    ),
    "Please stop upper-body training. Have this seen by a doctor today, "
    "in an emergency department where nothing else is open. {coach} is told now. "
    "If it gets worse, call your local emergency number.": (
        "Para el entrenamiento del tren superior, por favor. Que lo vea un médico hoy, "
        "en urgencias si no hay otra cosa abierta. {coach} recibe el aviso ahora. "
        "Si empeora, llama a tu número local de emergencias."
    ),
    "Please stop upper-body training for now. Have it looked at by a doctor "
    "or physiotherapist. {coach} is told. If it gets worse, do not wait.": (
        "Para por ahora el entrenamiento del tren superior, por favor. "
        "Que lo vea un médico o fisioterapeuta. {coach} recibe el aviso. Si empeora, no esperes."
    ),
    "We leave that movement out. If the tingling comes back, lasts, or an arm feels weak, "
    "have it looked at today. {coach} is told.": (
        "Dejamos fuera ese movimiento. Si el hormigueo vuelve o dura, o un brazo pierde fuerza, "
        "que lo vean hoy. {coach} recibe el aviso."
    ),
    "We leave out what loads that place. Please have it looked at by a doctor "
    "or physiotherapist. {coach} is told. If it gets worse, do not wait.": (
        "Quitamos lo que carga esa zona. Que la vea un médico o fisioterapeuta, por favor. "
        "{coach} recibe el aviso. Si empeora, no esperes."
    ),
    "I am glad you wrote that. You matter, and this needs a person, not a bot. "
    "Please call {number} or a crisis line now. Ask somebody to stay with you. "
    "I have told your coach only that you need a person now. "
    "I cannot promise to keep it secret.": (
        "Me alegra que lo hayas escrito. Importas, y esto necesita a una persona, no a un bot. "
        "Llama al {number} o a una línea de crisis ahora, por favor. "
        "Pide a alguien que se quede contigo. "
        "A quien te entrena solo le he dicho que necesitas a una persona ahora. "
        "No puedo prometer que quede en secreto."
    ),
    "I could not reach your coach. Do not wait for an answer here. "
    "If it is urgent, call your local emergency number or see a doctor.": (
        "No he podido avisar a quien te entrena. No esperes respuesta aquí. "
        "Si es urgente, llama a tu número local de emergencias o ve a un médico."
    ),
    "I could not handle your message, that is my fault ({reference}). "
    "I passed it to {coach} as you wrote it. If something hurts badly or worries you, "
    "do not wait for us: call your local emergency number or see a doctor.": (
        "No he podido tratar tu mensaje, es culpa mía ({reference}). "
        "Se lo he pasado a {coach} tal como lo escribiste. Si algo duele mucho o te preocupa, "
        "no nos esperes: llama a tu número local de emergencias o ve a un médico."
    ),
    "{coach} has looked at what you reported.": "{coach} ha mirado lo que contaste.",
    "{coach} has looked at what you reported: {where}.": (
        "{coach} ha mirado lo que contaste: {where}."
    ),
    "From your next session on": "Desde tu próxima sesión",
    "From {day} on": "Desde el {day}",
    "{start}, what was left out comes back in small steps.": (
        "{start}, lo que quedó fuera vuelve en pasos pequeños."
    ),
    "The first sessions have fewer sets than before.": (
        "Las primeras sesiones tienen menos series que antes."
    ),
    "If it hurts again, stop that movement and tell me where and how much. "
    "If it gets worse or worries you, see a doctor or physiotherapist.": (
        "Si vuelve a doler, para ese movimiento y dime dónde y cuánto. "
        "Si empeora o te preocupa, ve a un médico o fisioterapeuta."
    ),
    "If the signs come back, stop and call the emergency number.": (
        "Si vuelven las señales, para y llama al número de emergencias."
    ),
    "<b>In an emergency</b>\nCall {call}. Nobody may be watching this chat.": (
        "<b>En una emergencia</b>\nLlama al {call}. Puede que nadie mire este chat."
    ),
    "{number}": "{number}",
    "<b>What this is not</b>\n"
    "This is coaching support, not medical advice. It cannot examine you, and {coach} does "
    "not diagnose. Local rules and licensed professionals come first.\n"
    "The pain levels come from studies of leg tendons. For shoulders, elbows and wrists "
    "they are carried over with care. The warning signs are our own reading of published "
    "sources. A clinician must check both before use.": (
        "<b>Lo que esto no es</b>\n"
        "Es apoyo al entrenamiento, no consejo médico. No puede examinarte, y {coach} no "
        "diagnostica. Primero van las normas locales y los profesionales titulados.\n"
        "Los niveles de dolor vienen de estudios con tendones de la pierna. En hombros, codos y "
        "muñecas se aplican con cuidado. Las señales de aviso son nuestra lectura de fuentes "
        "publicadas. Un profesional sanitario debe revisar ambas cosas antes del uso."
    ),
    "Please see a doctor about what you ticked before you train. "
    "Pressure or pain in the chest, fainting, or breathlessness that does not settle: "
    "call {call} now. Nobody may be watching this chat.": (
        "Consulta con un médico lo que marcaste antes de entrenar, por favor. "
        "Presión o dolor en el pecho, desmayo, o falta de aire que no se calma: "
        "llama al {call} ahora. Puede que nadie mire este chat."
    ),
    "You said that something hurts now. Send /pain, so that {coach} knows where and how much. "
    "If it gets worse or worries you, see a doctor or physiotherapist.": (
        "Dijiste que algo te duele ahora. Envía /pain, para que {coach} sepa dónde y cuánto. "
        "Si empeora o te preocupa, ve a un médico o fisioterapeuta."
    ),
}
QUESTIONS: Mapping[str, str] = {
    "Is it inside the chest, or the muscle when you press it?": (
        "¿Es dentro del pecho, o el músculo al apretarlo?"
    ),
    "Does it come with effort such as stairs, without moving the arm?": (
        "¿Viene con esfuerzo, como escaleras, sin mover el brazo?"
    ),
    "Are you still short of breath at rest?": "¿Te sigue faltando el aire en reposo?",
    "Is there a sharp pain when you breathe in?": "¿Hay un dolor agudo al tomar aire?",
    "Did you pass out, or nearly, during exercise?": (
        "¿Te desmayaste, o casi, haciendo ejercicio?"
    ),
    "Are you hot and confused, or not clear in the head?": (
        "¿Tienes mucho calor y confusión, o la cabeza poco clara?"
    ),
    "Is a face side, an arm or your speech suddenly weak or odd?": (
        "¿Un lado de la cara, un brazo o el habla están de repente débiles o raros?"
    ),
    "Did the headache come suddenly, the worst you know?": (
        "¿El dolor de cabeza vino de golpe, el peor que conoces?"
    ),
    "Since the knock: headache, fog, vomiting, gaps or drowsiness?": (
        "Desde el golpe: ¿dolor de cabeza, niebla, vómitos, lagunas o sueño?"
    ),
    "With the neck: dizziness, double vision, or signs in arms or legs?": (
        "Con el cuello: ¿mareo, visión doble, o señales en brazos o piernas?"
    ),
    "Did the joint slip out, also if it went back, or look out of place?": (
        "¿Se salió la articulación, aunque volviera, o se ve fuera de sitio?"
    ),
    "Is the limb hard, swollen and very painful?": (
        "¿Está la extremidad dura, hinchada y con mucho dolor?"
    ),
    "Did you lose control of bladder or bowel?": "¿Perdiste el control de la orina o el vientre?",
    "Are you pregnant and bleeding?": "¿Estás embarazada y sangras?",
    "Did you take more of something than you should?": "¿Tomaste más de algo de lo que debías?",
    "Are you thinking of harming yourself?": "¿Piensas en hacerte daño?",
    "Was there a pop or tear, and it lost strength, shape or turned blue?": (
        "¿Hubo un chasquido o desgarro, y perdió fuerza, forma o color?"
    ),
    "Is one arm swollen, heavy or another colour?": (
        "¿Hay un brazo hinchado, pesado o de otro color?"
    ),
    "Dark urine, or swelling or weakness far beyond the work done?": (
        "¿Orina oscura, o hinchazón o debilidad mucho mayor que el trabajo hecho?"
    ),
    "Do you have a fever, or is the joint hot and red?": (
        "¿Tienes fiebre, o la articulación está caliente y roja?"
    ),
    "Is it still numb, weak or tingling after some minutes?": (
        "¿Sigue dormido, débil o con hormigueo tras unos minutos?"
    ),
    "Did your heart race or skip in or after exercise, unlike usual?": (
        "¿El corazón corrió o saltó con el ejercicio, o después, de forma inusual?"
    ),
    "Is one calf swollen?": "¿Tienes una pantorrilla hinchada?",
    "Do you take blood thinners, and the bruise is growing?": (
        "¿Tomas anticoagulantes, y el moratón crece?"
    ),
    "Is it impossible to lift the arm?": "¿Te es imposible levantar el brazo?",
    "Since the fall: swelling, or a grip that is gone?": (
        "Desde la caída: ¿hinchazón, o agarre perdido?"
    ),
    "Does it hurt at night or at rest, whatever you do, on two nights or more?": (
        "¿Duele de noche o en reposo, hagas lo que hagas, dos noches o más?"
    ),
    "Do you feel ill with it: lost weight, night sweats?": (
        "¿Te sientes mal además: peso perdido, sudores de noche?"
    ),
    "Is there anything else that worries you about it?": "¿Hay algo más que te preocupe?",
    "/export your data as files\n/leave leave, and have everything about you erased": (
        "/export tus datos en archivos\n/leave irte y que se borre todo lo tuyo"
    ),
}
SPANISH: Mapping[str, str] = {**PLACES, **REPORTS, **SIGNS, **QUESTIONS}
