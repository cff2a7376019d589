using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using WearWatch.Phrases;

namespace WearWatch.Storage;

/// <summary>Keeps a phrase in a text column with its facts, so that it is read in the reader's language.</summary>
internal sealed class KeptPhrase() : ValueConverter<Phrase, string>(
    phrase => PhraseText.Of(phrase),
    kept => PhraseText.Read(kept));
