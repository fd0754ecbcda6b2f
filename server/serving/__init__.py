"""Answer requests over sockets that nobody can stall.

Three rules keep a client that says nothing, half of something or takes
nothing from being in anybody's way:

1. One thread a process, the worker's own, owns every socket that is waited
   for, and never waits for one alone: TLS handshakes, requests still on their
   way, idle connections, answers that the client takes slowly, sockets that
   are being closed. Each of them costs memory until its time is up.
2. A thread of the pool is given a request when all of it has come, and puts
   its answer together in memory. So no thread waits for a client.
3. Memory has an end: at the limit of connections or of bytes, the connection
   whose time is up soonest makes room.

A live stream leaves both: its view asks for the socket (`server.serving.hook`),
and whoever takes it owns it from then on.

Of gunicorn only its parser, its answers and the frame of a worker are used, see
`server.serving.worker`.
"""
