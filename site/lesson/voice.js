// What is said, read aloud by the browser where it has a voice.
export function createVoice() {
    const synthesis = window.speechSynthesis;
    let isOn = false;
    let rate = 1;
    return {
        has: () => synthesis !== undefined,
        isOn: () => isOn,
        turn(on) {
            isOn = on;
            if (!on) {
                synthesis?.cancel();
            }
        },
        setRate(next) { rate = next; },
        say(words) {
            if (!isOn || !synthesis) {
                return;
            }
            synthesis.cancel();
            const utterance = new SpeechSynthesisUtterance(words);
            utterance.lang = document.documentElement.lang;
            utterance.rate = rate;
            synthesis.speak(utterance);
        },
        stop() { synthesis?.cancel(); },
    };
}
