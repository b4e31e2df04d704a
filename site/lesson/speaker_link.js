// Keeps the speaker's window in step: on the same device, without a server.
export function createSpeakerLink(lesson) {
    const name = `gusset-lesson-${crypto.getRandomValues(new Uint32Array(2)).join('-')}`;
    const channel = new BroadcastChannel(name);
    channel.addEventListener('message', ({ data }) => {
        if (data.ask === 'state') {
            channel.postMessage({ state: lesson.state() });
        } else if (data.ask === 'go') {
            lesson.go(data.by);
        } else if (data.ask === 'to') {
            lesson.goTo(data.index);
        }
    });
    lesson.watch((state) => channel.postMessage({ state }));
    return {
        open: () => window.open(`speaker.html#${name}`, name, 'popup,width=520,height=640') !== null,
    };
}
