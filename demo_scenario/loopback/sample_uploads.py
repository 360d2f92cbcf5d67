"""What a person sends when the script does not say which picture, clip or note: our own bytes."""

from demo_scenario.loopback.files import Upload

PHOTO = Upload("photo.jpg", b"\xff\xd8\xff\xe0 a picture that nobody opens", "image/jpeg")
CLIP = Upload("clip.mp4", b"\x00\x00\x00\x18ftypmp42 a clip that nobody plays", "video/mp4")
VOICE_NOTE = Upload("voice.ogg", b"OggS a note that nobody hears", "audio/ogg")
STICKER = Upload("sticker.webp", b"RIFF a sticker", "image/webp")
