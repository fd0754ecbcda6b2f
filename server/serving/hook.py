"""How a view asks for the socket of its answer; nothing of gunicorn is here.

`environ[HAND_OVER](take)` lets `take(channel)` be called once what the view
answers has been put into the channel. The channel is the taker's from then on,
see `server.serving.channel`. Where the key is missing, the server keeps a
thread for the answer and the view has to go on by itself.
"""

HAND_OVER = "vatside.hand_over"
