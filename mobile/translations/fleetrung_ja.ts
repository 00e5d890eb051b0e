<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="ja" sourcelanguage="en">
<context>
    <name>ArchiveSheet</name>
    <message>
        <source>Archive</source>
        <translation>保管庫</translation>
    </message>
    <message>
        <source>Everything they did is kept. An athlete who comes back goes on where they were.</source>
        <translation>行ったことはすべて残ります。戻ればその続きからです。</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>戻す</translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation>%1 を戻す</translation>
    </message>
</context>
<context>
    <name>AthleteCard</name>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>shown on all pages</source>
        <translation>全ページに表示中</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>%1 を編集</translation>
    </message>
</context>
<context>
    <name>AthleteSheet</name>
    <message>
        <source>Add an athlete</source>
        <translation>選手を追加</translation>
    </message>
    <message>
        <source>Edit the athlete</source>
        <translation>選手を編集</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>Body mass, %1 (optional)</source>
        <translation>体重、%1（任意）</translation>
    </message>
    <message>
        <source>Stature, %1 (optional)</source>
        <translation>身長、%1（任意）</translation>
    </message>
    <message>
        <source>Years of regular lifting (optional)</source>
        <translation>継続的な筋力トレーニング歴、年（任意）</translation>
    </message>
    <message>
        <source>Event (optional)</source>
        <translation>種目（任意）</translation>
    </message>
    <message>
        <source>200 m, long jump</source>
        <translation>200 m、走幅跳</translation>
    </message>
    <message>
        <source>Training group (optional)</source>
        <translation>練習グループ（任意）</translation>
    </message>
    <message>
        <source>sprint 2</source>
        <translation>短距離2</translation>
    </message>
    <message>
        <source>Under 18: has a guardian agreed?</source>
        <translation>18歳未満：保護者の同意は？</translation>
    </message>
    <message>
        <source>No, or not needed</source>
        <translation>いいえ、または不要</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>はい</translation>
    </message>
    <message>
        <source>Move to the archive</source>
        <translation>保管庫に入れる</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
    <message>
        <source>Born, like %1</source>
        <translation>生年月日（例 %1）</translation>
    </message>
</context>
<context>
    <name>BarWords</name>
    <message>
        <source>Lighter than the bar of %1: a lighter bar, or dumbbells.</source>
        <translation>%1 のバーより軽い：軽いバーかダンベルを使います。</translation>
    </message>
    <message>
        <source>The bar alone, %1.</source>
        <translation>バーのみ、%1。</translation>
    </message>
    <message>
        <source>Each side %1. Bar %2.</source>
        <translation>片側 %1。バー %2。</translation>
    </message>
    <message>
        <source>Nearest with whole plates: %1. %2</source>
        <translation>プレートで最も近い値：%1。%2</translation>
    </message>
    <message>
        <source>More than ten possible repetitions say too little of 1RM.</source>
        <translation>11回以上できる負荷では 1RM はほとんど分かりません。</translation>
    </message>
    <message>
        <source>1RM %1.</source>
        <translation>1RM %1。</translation>
    </message>
    <message>
        <source>1RM about %1; by seven formulas %2 to %3.</source>
        <translation>1RM 約 %1。7つの式で %2～%3。</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1回</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1回</translation>
    </message>
    <message>
        <source>%1 of 1RM</source>
        <translation>1RM の %1</translation>
    </message>
    <message>
        <source>many left</source>
        <translation>余力は多い</translation>
    </message>
    <message>
        <source>about %1 left (%2 to %3)</source>
        <translation>残り約%1回（%2～%3）</translation>
    </message>
</context>
<context>
    <name>BestsSheet</name>
    <message>
        <source>Personal bests</source>
        <translation>自己ベスト</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind behind a competition makes its time wind-aided: it is no best. A time by hand is one only where there is no other.</source>
        <translation>競技会で追い風 2.0 m/s を超えると追い風参考となり、ベストになりません。手動計時は他にない場合だけベストになります。</translation>
    </message>
</context>
<context>
    <name>BigNumber</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>BlockSheet</name>
    <message>
        <source>Days away</source>
        <translation>休む日</translation>
    </message>
    <message>
        <source>Change the days away</source>
        <translation>休む日を変更</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>理由は？</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>移動</translation>
    </message>
    <message>
        <source>Exams</source>
        <translation>試験</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>病気</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>けが</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>どこ？</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>初日</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>最終日</translation>
    </message>
    <message>
        <source>Take these days out of the plan</source>
        <translation>この期間を計画から外す</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
</context>
<context>
    <name>BottomBar</name>
    <message>
        <source>Bench</source>
        <translation>ベンチ</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>ラダー</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>トラック</translation>
    </message>
    <message>
        <source>Trends</source>
        <translation>推移</translation>
    </message>
    <message>
        <source>Squad</source>
        <translation>チーム</translation>
    </message>
    <message>
        <source>Places</source>
        <translation>場所</translation>
    </message>
</context>
<context>
    <name>BoxCard</name>
    <message>
        <source>Drop jumps by box</source>
        <translation>台高別ドロップジャンプ</translation>
    </message>
    <message>
        <source>best reactive strength within the contact limit</source>
        <translation>接地の限度内で最も高い反応筋力</translation>
    </message>
    <message>
        <source>Contact is longer than 250 ms: a lower box.</source>
        <translation>接地が 250 ms を超えています：台を低く。</translation>
    </message>
    <message>
        <source>Medians of the last day on each box. Go up 10 cm while contact stays short, no heel strikes the ground and RSI does not fall. Heels are not kept with a typed jump: watch them.</source>
        <translation>台ごとの最終日の中央値です。接地が短く、かかとが着かず、RSI が下がらない間は 10 cm 上げます。かかとは入力では残らないので目で確かめてください。</translation>
    </message>
</context>
<context>
    <name>CalibrationSheet</name>
    <message>
        <source>Six sides</source>
        <translation>6つの面</translation>
    </message>
    <message>
        <source>Lay it on each side, in any order, on something hard and level. Wait for the tick.</source>
        <translation>硬く水平な所に、どの順でもよいので各面を下にして置きます。チェックが付くまで待ちます。</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>前</translation>
    </message>
    <message>
        <source>how far gravity was off at worst</source>
        <translation>重力の最大のずれ</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>今</translation>
    </message>
    <message>
        <source>with the six sides measured</source>
        <translation>6面を測った後</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>最初から</translation>
    </message>
</context>
<context>
    <name>CautionsSheet</name>
    <message>
        <source>This is not medical advice. Work with a licensed coach or clinician; local rules and facility codes come first.</source>
        <translation>これは医学的助言ではありません。資格のある指導者や医師とともに行い、地域や施設の規則を優先してください。</translation>
    </message>
    <message>
        <source>Pain, an injury or pregnancy: ask a clinician before you train by this plan.</source>
        <translation>痛み、けが、妊娠の場合は、この計画で練習する前に医師に相談してください。</translation>
    </message>
    <message>
        <source>Under 18: only with a guardian&apos;s consent and a clearance.</source>
        <translation>18歳未満：保護者の同意と医師の許可がある場合のみ。</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range carry more load than you are used to: safety bars set, and a spotter.</source>
        <translation>短い可動域の高重量は慣れた以上の負荷になります：セーフティをセットし、補助者をつけてください。</translation>
    </message>
    <message>
        <source>Drop jumps: few contacts, days between, and none when you are sore.</source>
        <translation>ドロップジャンプ：回数は少なく、間隔を空け、筋肉痛のときは行いません。</translation>
    </message>
    <message>
        <source>An estimated one-repetition maximum is an estimate. Never load it to see whether it is right.</source>
        <translation>推定 1RM は推定です。確かめるために載せてはいけません。</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>始める前に</translation>
    </message>
    <message>
        <source>That shorter ranges carry over better to sprinting is the working premise of this program. There is evidence on both sides; your own stopwatch decides.</source>
        <translation>短い可動域のほうが走りに移るというのは、このプログラムの作業仮説です。根拠は両側にあります。決めるのはあなたのストップウォッチです。</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>読みました</translation>
    </message>
</context>
<context>
    <name>CheckCard</name>
    <message>
        <source>Take it lighter today</source>
        <translation>今日は軽くする</translation>
    </message>
    <message>
        <source>If not: why?</source>
        <translation>しない場合の理由は？</translation>
    </message>
    <message>
        <source>bar slipped in the warm-up</source>
        <translation>ウォームアップでバーが滑った</translation>
    </message>
    <message>
        <source>Keep the plan</source>
        <translation>計画どおりにする</translation>
    </message>
</context>
<context>
    <name>CompetitionSheet</name>
    <message>
        <source>A new competition</source>
        <translation>新しい競技会</translation>
    </message>
    <message>
        <source>Change the competition</source>
        <translation>競技会を変更</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>club championship</source>
        <translation>クラブ選手権</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>日</translation>
    </message>
    <message>
        <source>Priority</source>
        <translation>優先度</translation>
    </message>
    <message>
        <source>The season is counted back from it</source>
        <translation>シーズンはここから逆算します</translation>
    </message>
    <message>
        <source>Main competition</source>
        <translation>主要競技会</translation>
    </message>
    <message>
        <source>Delete this competition</source>
        <translation>この競技会を削除</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
</context>
<context>
    <name>ConsequencesCard</name>
    <message>
        <source>What this does to the plan</source>
        <translation>計画への影響</translation>
    </message>
</context>
<context>
    <name>CutOffCard</name>
    <message>
        <source>Keep</source>
        <translation>残す</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>捨てる</translation>
    </message>
</context>
<context>
    <name>DayChooser</name>
    <message>
        <source>a week sooner</source>
        <translation>1週間早く</translation>
    </message>
    <message>
        <source>− week</source>
        <translation>− 週</translation>
    </message>
    <message>
        <source>a day sooner</source>
        <translation>1日早く</translation>
    </message>
    <message>
        <source>− day</source>
        <translation>− 日</translation>
    </message>
    <message>
        <source>a day later</source>
        <translation>1日遅く</translation>
    </message>
    <message>
        <source>+ day</source>
        <translation>+ 日</translation>
    </message>
    <message>
        <source>a week later</source>
        <translation>1週間遅く</translation>
    </message>
    <message>
        <source>+ week</source>
        <translation>+ 週</translation>
    </message>
    <message>
        <source>The month before</source>
        <translation>前の月</translation>
    </message>
    <message>
        <source>The month after</source>
        <translation>次の月</translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation>%1、今日</translation>
    </message>
</context>
<context>
    <name>DecideSheet</name>
    <message>
        <source>Decide otherwise</source>
        <translation>別の判断をする</translation>
    </message>
    <message>
        <source>Your decision counts. It is kept with the evidence and your reason, so that the season can be read later.</source>
        <translation>あなたの判断が優先です。根拠と理由とともに残り、後でシーズンを読み返せます。</translation>
    </message>
    <message>
        <source>What will you do?</source>
        <translation>どうしますか？</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>理由は？</translation>
    </message>
    <message>
        <source>for example: knee is sore, competition moved</source>
        <translation>例：膝が痛い、競技会が動いた</translation>
    </message>
    <message>
        <source>Keep this decision</source>
        <translation>この判断を残す</translation>
    </message>
</context>
<context>
    <name>DemoStrip</name>
    <message>
        <source>Cancel</source>
        <translation>中止</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>離れる</translation>
    </message>
    <message>
        <source>Cancel making the demo squad</source>
        <translation>見本チームの作成を中止</translation>
    </message>
    <message>
        <source>Leave the demo squad and remove it</source>
        <translation>見本チームを離れて消す</translation>
    </message>
</context>
<context>
    <name>DeviceCard</name>
    <message>
        <source>This device</source>
        <translation>この端末</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>言語</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>小数点</translation>
    </message>
    <message>
        <source>As the language</source>
        <translation>言語に合わせる</translation>
    </message>
    <message>
        <source>Point, 1.85</source>
        <translation>点、1.85</translation>
    </message>
    <message>
        <source>Comma, 1,85</source>
        <translation>コンマ、1,85</translation>
    </message>
    <message>
        <source>Weeks of the calendar begin on</source>
        <translation>カレンダーの週の始まり</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>月曜日</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>日曜日</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>負荷</translation>
    </message>
    <message>
        <source>Kilograms</source>
        <translation>キログラム</translation>
    </message>
    <message>
        <source>Pounds</source>
        <translation>ポンド</translation>
    </message>
    <message>
        <source>The bar</source>
        <translation>バー</translation>
    </message>
    <message>
        <source>Ranges and boxes</source>
        <translation>可動域と台</translation>
    </message>
    <message>
        <source>Centimetres</source>
        <translation>センチメートル</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>インチ</translation>
    </message>
    <message>
        <source>Sound on Bench</source>
        <translation>ベンチでの音</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation>なし</translation>
    </message>
    <message>
        <source>Tones</source>
        <translation>音</translation>
    </message>
    <message>
        <source>Voice</source>
        <translation>声</translation>
    </message>
    <message>
        <source>Shakes in the hand, where the device can</source>
        <translation>手元の振動（端末が対応する場合）</translation>
    </message>
    <message>
        <source>On</source>
        <translation>オン</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>オフ</translation>
    </message>
    <message>
        <source>Sets begin when the bar moves, and end when it has rested for 15 s</source>
        <translation>バーが動くとセットが始まり、15秒止まると終わる</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>明るさ</translation>
    </message>
    <message>
        <source>As the device</source>
        <translation>端末に合わせる</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>暗い</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>明るい</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>文字の大きさ</translation>
    </message>
    <message>
        <source>Normal</source>
        <translation>標準</translation>
    </message>
    <message>
        <source>150 %</source>
        <translation>150 %</translation>
    </message>
    <message>
        <source>200 %</source>
        <translation>200 %</translation>
    </message>
</context>
<context>
    <name>DidItWorkCard</name>
    <message>
        <source>Did it work?</source>
        <translation>効果はあったか？</translation>
    </message>
    <message>
        <source>How this is judged</source>
        <translation>判定のしかた</translation>
    </message>
</context>
<context>
    <name>DoneSetSheet</name>
    <message>
        <source>Load, %1</source>
        <translation>負荷、%1</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>セットの種類</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>本番</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>確認</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>ウォームアップ</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>維持</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (optional)</source>
        <translation>きつさ、1楽～10全力（任意）</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>戻す</translation>
    </message>
    <message>
        <source>Strike out</source>
        <translation>取り消す</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>No evidence</source>
        <translation>根拠外にする</translation>
    </message>
    <message>
        <source>Is evidence</source>
        <translation>根拠にする</translation>
    </message>
    <message>
        <source>Was left</source>
        <translation>左だった</translation>
    </message>
    <message>
        <source>Was right</source>
        <translation>右だった</translation>
    </message>
    <message>
        <source>One repetition is missing</source>
        <translation>1回足りない</translation>
    </message>
    <message>
        <source>It is counted as done. Velocity and time only if you measured them otherwise.</source>
        <translation>行ったものとして数えます。速度と時間は別に測った場合だけ。</translation>
    </message>
    <message>
        <source>Velocity, m/s (if measured)</source>
        <translation>速度、m/s（測った場合）</translation>
    </message>
    <message>
        <source>%1, ms (if measured)</source>
        <translation>%1、ms（測った場合）</translation>
    </message>
    <message>
        <source>Add the repetition</source>
        <translation>反復を追加</translation>
    </message>
    <message>
        <source>Delete this set</source>
        <translation>このセットを削除</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
</context>
<context>
    <name>DoneSetsSheet</name>
    <message>
        <source>Sets done today</source>
        <translation>今日のセット</translation>
    </message>
    <message>
        <source>Nothing yet. Each set stands here once it is done, to be looked at and put right.</source>
        <translation>まだありません。終わったセットはここに並び、見直して直せます。</translation>
    </message>
</context>
<context>
    <name>EngineWords</name>
    <message>
        <source>Squat</source>
        <translation>スクワット</translation>
    </message>
    <message>
        <source>Step-up</source>
        <translation>ステップアップ</translation>
    </message>
    <message>
        <source>Clean</source>
        <translation>クリーン</translation>
    </message>
    <message>
        <source>Hinge</source>
        <translation>ヒンジ</translation>
    </message>
    <message>
        <source>Pull</source>
        <translation>プル</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>ドロップジャンプ</translation>
    </message>
    <message>
        <source>Ankle</source>
        <translation>足首</translation>
    </message>
    <message>
        <source>Full squat</source>
        <translation>フルスクワット</translation>
    </message>
    <message>
        <source>Parallel squat</source>
        <translation>パラレルスクワット</translation>
    </message>
    <message>
        <source>Half squat</source>
        <translation>ハーフスクワット</translation>
    </message>
    <message>
        <source>Quarter squat</source>
        <translation>クォータースクワット</translation>
    </message>
    <message>
        <source>Quarter squat from pins</source>
        <translation>ピンからのクォータースクワット</translation>
    </message>
    <message>
        <source>Short drop squat</source>
        <translation>短いドロップスクワット</translation>
    </message>
    <message>
        <source>Full</source>
        <translation>フル</translation>
    </message>
    <message>
        <source>Parallel</source>
        <translation>パラレル</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>ハーフ</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>クォーター</translation>
    </message>
    <message>
        <source>Quarter from pins</source>
        <translation>ピンからクォーター</translation>
    </message>
    <message>
        <source>Short drop</source>
        <translation>短いドロップ</translation>
    </message>
    <message>
        <source>Step-up, %1</source>
        <translation>ステップアップ、%1</translation>
    </message>
    <message>
        <source>Clean from the floor, caught low</source>
        <translation>床からのクリーン、低く受ける</translation>
    </message>
    <message>
        <source>Power clean from the floor</source>
        <translation>床からのパワークリーン</translation>
    </message>
    <message>
        <source>Power clean from blocks at the knee</source>
        <translation>膝高ブロックからのパワークリーン</translation>
    </message>
    <message>
        <source>Power clean from the hang</source>
        <translation>ハングパワークリーン</translation>
    </message>
    <message>
        <source>Power clean from the hang, fast drop</source>
        <translation>ハングパワークリーン、速い下降</translation>
    </message>
    <message>
        <source>Romanian deadlift to mid-shin</source>
        <translation>すね中央までのルーマニアンデッドリフト</translation>
    </message>
    <message>
        <source>Romanian deadlift to the knee</source>
        <translation>膝までのルーマニアンデッドリフト</translation>
    </message>
    <message>
        <source>Quarter hinge</source>
        <translation>クォーターヒンジ</translation>
    </message>
    <message>
        <source>Pull from the floor</source>
        <translation>床からのプル</translation>
    </message>
    <message>
        <source>Pull from knee blocks</source>
        <translation>膝ブロックからのプル</translation>
    </message>
    <message>
        <source>Pull from mid-thigh blocks</source>
        <translation>大腿中央ブロックからのプル</translation>
    </message>
    <message>
        <source>High pull from mid-thigh</source>
        <translation>大腿中央からのハイプル</translation>
    </message>
    <message>
        <source>Drop jump, %1, entry</source>
        <translation>ドロップジャンプ、%1、導入</translation>
    </message>
    <message>
        <source>Drop jump, %1, on the way up</source>
        <translation>ドロップジャンプ、%1、上げる途中</translation>
    </message>
    <message>
        <source>Drop jump, %1, on the way down</source>
        <translation>ドロップジャンプ、%1、下げる途中</translation>
    </message>
    <message>
        <source>Drop jump, %1, quickest contact</source>
        <translation>ドロップジャンプ、%1、最短接地</translation>
    </message>
    <message>
        <source>Drop jump, %1</source>
        <translation>ドロップジャンプ、%1</translation>
    </message>
    <message>
        <source>Calf raise through full range</source>
        <translation>カーフレイズ全可動域</translation>
    </message>
    <message>
        <source>Calf raise, upper half</source>
        <translation>カーフレイズ上半分</translation>
    </message>
    <message>
        <source>Loaded ankle hops</source>
        <translation>負荷付き足首ホップ</translation>
    </message>
    <message>
        <source>general preparation</source>
        <translation>一般的準備期</translation>
    </message>
    <message>
        <source>special preparation</source>
        <translation>専門的準備期</translation>
    </message>
    <message>
        <source>pre-competition</source>
        <translation>試合前期</translation>
    </message>
    <message>
        <source>competition</source>
        <translation>試合期</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>テーパー</translation>
    </message>
    <message>
        <source>transition</source>
        <translation>移行期</translation>
    </message>
    <message>
        <source>time to peak velocity</source>
        <translation>最大速度到達時間</translation>
    </message>
    <message>
        <source>time to peak</source>
        <translation>到達時間</translation>
    </message>
    <message>
        <source>drop time</source>
        <translation>下降時間</translation>
    </message>
    <message>
        <source>contact time</source>
        <translation>接地時間</translation>
    </message>
    <message>
        <source>sessions on this rung</source>
        <translation>この段での練習</translation>
    </message>
    <message>
        <source>days on this rung</source>
        <translation>この段での日数</translation>
    </message>
    <message>
        <source>days past the latest date</source>
        <translation>最終期限を過ぎた日数</translation>
    </message>
    <message>
        <source>days until the next rung&apos;s phase</source>
        <translation>次の段の期までの日数</translation>
    </message>
    <message>
        <source>days away from this ladder</source>
        <translation>このラダーを離れた日数</translation>
    </message>
    <message>
        <source>days since a heavy ladder stepped</source>
        <translation>重いラダーが進んでからの日数</translation>
    </message>
    <message>
        <source>strength against the first four sessions</source>
        <translation>最初の4回に対する筋力</translation>
    </message>
    <message>
        <source>probe velocity against entry</source>
        <translation>開始時に対する確認セットの速度</translation>
    </message>
    <message>
        <source>valid repetitions</source>
        <translation>有効な反復</translation>
    </message>
    <message>
        <source>reactive strength index</source>
        <translation>反応筋力指数</translation>
    </message>
    <message>
        <source>sleep</source>
        <translation>睡眠</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>痛み</translation>
    </message>
    <message>
        <source>%1, gain since entry</source>
        <translation>%1、開始からの改善</translation>
    </message>
    <message>
        <source>%1, last two sooner than the six before</source>
        <translation>%1、直近2回が前の6回より早い</translation>
    </message>
    <message>
        <source>%1, later than before</source>
        <translation>%1、以前より遅い</translation>
    </message>
    <message>
        <source>slower than usual at %1</source>
        <translation>%1 でいつもより遅い</translation>
    </message>
    <message>
        <source>days to %1</source>
        <translation>%1 までの日数</translation>
    </message>
    <message>
        <source>%1 sessions</source>
        <translation>%1回</translation>
    </message>
    <message>
        <source>%1 session</source>
        <translation>%1回</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1日</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1日</translation>
    </message>
    <message>
        <source>%1 of 10</source>
        <translation>10中%1</translation>
    </message>
    <message>
        <source>at least %1, counted as done: strength is up, speed is not</source>
        <translation>%1 以上、達成扱い：筋力は上がり速度は上がらず</translation>
    </message>
    <message>
        <source>at least %1 to be seen, for show</source>
        <translation>%1 以上で見える、参考</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>%1 以上</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>%1 以下</translation>
    </message>
    <message>
        <source>above %1, levelled off</source>
        <translation>%1 超、頭打ち</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>%1 超</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 未満</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>%1 より多い</translation>
    </message>
    <message>
        <source>%1, for show</source>
        <translation>%1、参考</translation>
    </message>
    <message>
        <source>On %1 time to peak came down from %2 to %3, more than it wanders by itself, and velocity held: go to %4.</source>
        <translation>%1 で到達時間が %2 から %3 へ、自然な揺れを超えて縮み、速度も保たれました：%4 へ進みます。</translation>
    </message>
    <message>
        <source>Stay on this box: %1.</source>
        <translation>この台のまま：%1。</translation>
    </message>
    <message>
        <source>Stay on %1: %2.</source>
        <translation>%1 のまま：%2。</translation>
    </message>
    <message>
        <source>At the latest the next step comes after %1.</source>
        <translation>遅くとも %1 の後に次へ進みます。</translation>
    </message>
    <message>
        <source>%1 is the last rung: it is kept to the last competition.</source>
        <translation>%1 は最後の段です：最後の競技会まで保ちます。</translation>
    </message>
    <message>
        <source>No session on this rung yet.</source>
        <translation>この段での練習はまだありません。</translation>
    </message>
    <message>
        <source>Fewer than three sessions with a measured %1 on this rung.</source>
        <translation>この段で%1を測った練習が3回に足りません。</translation>
    </message>
    <message>
        <source>The time for %1 ended on %2: go to %3.</source>
        <translation>%1 の期間は %2 に終わりました：%3 へ進みます。</translation>
    </message>
    <message>
        <source>No gain is claimed.</source>
        <translation>改善したとは言いません。</translation>
    </message>
    <message>
        <source>Contact is quick and the reactive strength index holds: go to %1.</source>
        <translation>接地が短く反応筋力指数も保たれています：%1 へ進みます。</translation>
    </message>
    <message>
        <source>Stay here if heels strike.</source>
        <translation>かかとが着くならここに留まります。</translation>
    </message>
    <message>
        <source>The last two sessions came %1 later than the six before: %2 % less load.</source>
        <translation>直近2回は前の6回より %1 遅くなりました：負荷を %2 % 減らします。</translation>
    </message>
    <message>
        <source>A very poor night: %1 % fewer sets, no step.</source>
        <translation>とても眠れなかった：セットを %1 % 減らし、進みません。</translation>
    </message>
    <message>
        <source>You chose not to lift today.</source>
        <translation>今日は挙げないと選びました。</translation>
    </message>
    <message>
        <source>The rung waits.</source>
        <translation>段は待ちます。</translation>
    </message>
    <message>
        <source>See a clinician before you go on.</source>
        <translation>続ける前に医師に相談してください。</translation>
    </message>
    <message>
        <source>Pain of %1 of 10 where this lift loads: it rests today, a lift that does not load that place may stand in.</source>
        <translation>この種目が負荷をかける所の痛みが10中%1：今日は休み、そこに負荷のない種目で代われます。</translation>
    </message>
    <message>
        <source>This day lies outside the season.</source>
        <translation>この日はシーズン外です。</translation>
    </message>
    <message>
        <source>Transition: active rest, no primary lifts.</source>
        <translation>移行期：積極的休養、主要種目なし。</translation>
    </message>
    <message>
        <source>%1 is today: no lifting.</source>
        <translation>今日は%1：挙げません。</translation>
    </message>
    <message>
        <source>%1 is in %2: nothing heavy.</source>
        <translation>%1 まで%2：重いものはなし。</translation>
    </message>
    <message>
        <source>A light, fast primer of at most %1 repetitions at %2 or less is allowed.</source>
        <translation>%2 以下で最大 %1 回の軽く速い刺激は行えます。</translation>
    </message>
    <message>
        <source>The step to %1 is ready, but another heavy ladder stepped %2: it waits.</source>
        <translation>%1 へ進む用意はできましたが、別の重いラダーが%2進みました：待ちます。</translation>
    </message>
    <message>
        <source>today</source>
        <translation>今日</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>昨日</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>%1日前に</translation>
    </message>
    <message>
        <source>%1 more session on this rung</source>
        <translation>この段であと%1回</translation>
    </message>
    <message>
        <source>%1 more sessions on this rung</source>
        <translation>この段であと%1回</translation>
    </message>
    <message>
        <source>%1 more day on this rung</source>
        <translation>この段であと%1日</translation>
    </message>
    <message>
        <source>%1 more days on this rung</source>
        <translation>この段であと%1日</translation>
    </message>
    <message>
        <source>%1 until the phase in which %2 begins</source>
        <translation>%2 が始まる期まで%1</translation>
    </message>
    <message>
        <source>%1 is no sooner than at entry, and only %2 are more than it wanders by itself</source>
        <translation>%1は開始時より早くなく、自然な揺れを超えるには %2 必要</translation>
    </message>
    <message>
        <source>%1 is %2 sooner than at entry, and only %3 are more than it wanders by itself</source>
        <translation>%1は開始時より %2 早く、自然な揺れを超えるには %3 必要</translation>
    </message>
    <message>
        <source>strength is down by %1 % on this rung; a maintenance set is added</source>
        <translation>この段で筋力が %1 % 下がったため維持セットを加えます</translation>
    </message>
    <message>
        <source>only %1 % of the last repetitions kept the full range of this rung</source>
        <translation>最近の反復でこの段の可動域を保ったのは %1 % だけ</translation>
    </message>
    <message>
        <source>Find a load of effort 7 of 10 for %1 repetitions; about %2 of it is the probe load for the whole stay.</source>
        <translation>%1回できつさ10中7の負荷を探します。その約 %2 が、この段にいる間の確認の負荷です。</translation>
    </message>
    <message>
        <source>A low day: no heavy lifts without sprints before them.</source>
        <translation>軽い日：先にスプリントがなければ重い種目はしません。</translation>
    </message>
    <message>
        <source>Fleetrung is no medical advice. Work with a licensed coach or clinician; local rules and the facility&apos;s codes come first. Do not train through pain, injury or illness; in pregnancy ask a clinician first.</source>
        <translation>Fleetrung は医学的助言ではありません。資格のある指導者や医師とともに行い、地域と施設の規則を優先してください。痛み、けが、病気を押して練習せず、妊娠中は先に医師に相談してください。</translation>
    </message>
    <message>
        <source>A guardian must have agreed and a clinician must have cleared you. Somebody qualified watches every session. Load grows by at most 10 %, on at most three days a week that do not follow each other.</source>
        <translation>保護者の同意と医師の許可が必要です。毎回、資格のある人が見守ります。負荷の増加は最大 10 %、連続しない週3日まで。</translation>
    </message>
    <message>
        <source>Use safety bars and a spotter. Technique comes before load: stop the set when it breaks.</source>
        <translation>セーフティと補助者を使います。負荷より技術が先：崩れたらセットを止めます。</translation>
    </message>
    <message>
        <source>A shorter range lets more weight on your back than you can hold lower down. Set the safety bars just below the lowest point, have a spotter, and stay within the load shown.</source>
        <translation>短い可動域では、低い位置で支えられる以上の重さが背中に載ります。最下点のすぐ下にセーフティを置き、補助者をつけ、示された負荷を守ってください。</translation>
    </message>
    <message>
        <source>Keep the back as it was at the start of the pull. Stop with any pain in the back.</source>
        <translation>背中を引き始めの形に保ちます。背中に痛みがあれば止めます。</translation>
    </message>
    <message>
        <source>Land on the front of the foot on a firm, even surface. Stop when heels strike or contact grows long. No more than the contacts shown, two or three days between.</source>
        <translation>硬く平らな地面に前足部で着地します。かかとが着いたり接地が長くなったら止めます。示された回数まで、2～3日空けます。</translation>
    </message>
    <message>
        <source>Pain is a reason to stop, not a number to beat. With strong or sharp pain, limping, or new pain in the hamstring see a clinician before you sprint or lift again.</source>
        <translation>痛みは止める理由であり、超える数字ではありません。強い痛みや鋭い痛み、足を引きずる、ハムストリングスの新しい痛みがあれば、走る、挙げる前に医師に相談してください。</translation>
    </message>
    <message>
        <source>A 1RM estimated from repetitions or velocity is an estimate. Do not put it on the bar untested.</source>
        <translation>回数や速度からの 1RM は推定です。試さずにバーに載せないでください。</translation>
    </message>
    <message>
        <source>That strength built through shorter ranges carries over better to sprinting is the working premise, with evidence on both sides (for: Rhea et al. 2016, Human Movement 17(1):43-49; against: Hartmann et al. 2012, J Strength Cond Res 26(12):3243-3261).</source>
        <translation>短い可動域で作った筋力のほうが走りに移るというのは作業仮説で、根拠は両側にあります（賛成：Rhea ら 2016、Human Movement 17(1):43-49。反対：Hartmann ら 2012、J Strength Cond Res 26(12):3243-3261）。</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>実際</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>予定</translation>
    </message>
    <message>
        <source>main one</source>
        <translation>主要</translation>
    </message>
    <message>
        <source>probe set</source>
        <translation>確認セット</translation>
    </message>
    <message>
        <source>target band</source>
        <translation>目標帯</translation>
    </message>
    <message>
        <source>a run</source>
        <translation>1本</translation>
    </message>
    <message>
        <source>best of the day</source>
        <translation>その日の最高</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>根拠外</translation>
    </message>
    <message>
        <source>left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>曲線</translation>
    </message>
    <message>
        <source>top speed</source>
        <translation>最高速度</translation>
    </message>
    <message>
        <source>mean speed</source>
        <translation>平均速度</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>除外</translation>
    </message>
    <message>
        <source>a split</source>
        <translation>通過タイム</translation>
    </message>
    <message>
        <source>usual error</source>
        <translation>通常の誤差</translation>
    </message>
    <message>
        <source>your line</source>
        <translation>あなたの線</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>線</translation>
    </message>
    <message>
        <source>fastest at a load</source>
        <translation>負荷ごとの最速</translation>
    </message>
    <message>
        <source>fastest repetition of a day</source>
        <translation>その日の最速の反復</translation>
    </message>
    <message>
        <source>estimated 1RM</source>
        <translation>推定 1RM</translation>
    </message>
    <message>
        <source>chance reaches</source>
        <translation>偶然が届く</translation>
    </message>
    <message>
        <source>first steps</source>
        <translation>最初の数歩</translation>
    </message>
    <message>
        <source>now</source>
        <translation>今</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>%1週</translation>
    </message>
    <message>
        <source>Above the line: later than fitted.</source>
        <translation>線より上：曲線より遅い。</translation>
    </message>
    <message>
        <source>Above zero: quicker bar, quicker sprint that many weeks later. Whiskers: 95 %, for show.</source>
        <translation>0より上： バーが速いと、 その週数後のスプリントも速い。 ひげ： 95 %、 参考。</translation>
    </message>
    <message>
        <source>Each mark is a repetition, from concentric onset. Sprint contact times are for scale, not a goal.</source>
        <translation>各印は挙げ始めからの1回の反復。 スプリントの接地時間は目安で、 目標ではありません。</translation>
    </message>
    <message>
        <source>Each mark is a repetition, from concentric onset.</source>
        <translation>各印は挙げ始めからの1回の反復。</translation>
    </message>
    <message>
        <source>Lower is faster. Beside the best of a day: wind in m/s, tail wind positive.</source>
        <translation>低いほど速い。 その日の最高の横： 風 m/s、 追い風が正。</translation>
    </message>
    <message>
        <source>Lower is faster.</source>
        <translation>低いほど速い。</translation>
    </message>
    <message>
        <source>Times of different rungs are not to be compared: a shorter range is quicker anyway.</source>
        <translation>違う段の時間は比べられません： 短い可動域はもともと速いからです。</translation>
    </message>
    <message>
        <source>No fit.</source>
        <translation>曲線なし。</translation>
    </message>
    <message>
        <source>No measured loads yet.</source>
        <translation>測定した負荷がまだありません。</translation>
    </message>
    <message>
        <source>No probe sets yet.</source>
        <translation>確認セットがまだありません。</translation>
    </message>
    <message>
        <source>No runs yet.</source>
        <translation>走りがまだありません。</translation>
    </message>
    <message>
        <source>No weeks with both yet.</source>
        <translation>両方ある週がまだありません。</translation>
    </message>
    <message>
        <source>at least %1 to be seen</source>
        <translation>%1 以上で見える</translation>
    </message>
    <message>
        <source>Refused by the athlete</source>
        <translation>選手が断った</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>痛み</translation>
    </message>
    <message>
        <source>Pain: another lift</source>
        <translation>痛み：別の種目</translation>
    </message>
    <message>
        <source>Outside the season</source>
        <translation>シーズン外</translation>
    </message>
    <message>
        <source>Transition</source>
        <translation>移行期</translation>
    </message>
    <message>
        <source>Travel, exams, illness or injury</source>
        <translation>移動、試験、病気、けが</translation>
    </message>
    <message>
        <source>A new macrocycle</source>
        <translation>新しい周期</translation>
    </message>
    <message>
        <source>Layoff</source>
        <translation>中断</translation>
    </message>
    <message>
        <source>Rest before a competition</source>
        <translation>競技会前の休み</translation>
    </message>
    <message>
        <source>Ease: later than before</source>
        <translation>軽くする：以前より遅い</translation>
    </message>
    <message>
        <source>Ease: a poor night</source>
        <translation>軽くする：眠れなかった</translation>
    </message>
    <message>
        <source>Step by date</source>
        <translation>日付で進む</translation>
    </message>
    <message>
        <source>Up to the next box</source>
        <translation>次の台へ</translation>
    </message>
    <message>
        <source>Step for evidence</source>
        <translation>根拠により進む</translation>
    </message>
    <message>
        <source>Step by exposure, by choice</source>
        <translation>経験のため選んで進む</translation>
    </message>
    <message>
        <source>No response</source>
        <translation>反応なし</translation>
    </message>
    <message>
        <source>One heavy step in seven days</source>
        <translation>7日に重い段は1つ</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>種目</translation>
    </message>
    <message>
        <source>rung</source>
        <translation>段</translation>
    </message>
    <message>
        <source>load</source>
        <translation>負荷</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>セット</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>確認</translation>
    </message>
    <message>
        <source>set stop</source>
        <translation>セットの終わり</translation>
    </message>
    <message>
        <source>contacts</source>
        <translation>接地</translation>
    </message>
    <message>
        <source>maintenance</source>
        <translation>維持</translation>
    </message>
    <message>
        <source>%1 is the rung that the plan puts here, in %2.</source>
        <translation>%1 は計画がここに置く段です（%2）。</translation>
    </message>
    <message>
        <source>No load is known on this ladder yet: find one of effort 7 of 10.</source>
        <translation>このラダーの負荷はまだ分かりません：きつさ10中7のものを探します。</translation>
    </message>
    <message>
        <source>From %1, down to what the plates make.</source>
        <translation>%1 から、プレートで作れる重さへ下げます。</translation>
    </message>
    <message>
        <source>the last work load, never more on a longer range</source>
        <translation>前回の本番の負荷、長い可動域ではそれ以上にしない</translation>
    </message>
    <message>
        <source>the last work load</source>
        <translation>前回の本番の負荷</translation>
    </message>
    <message>
        <source>%1 x the full squat&apos;s estimated maximum</source>
        <translation>フルスクワットの推定最大の %1 倍</translation>
    </message>
    <message>
        <source>%1 x the last load on the rung before</source>
        <translation>前の段の最後の負荷の %1 倍</translation>
    </message>
    <message>
        <source>the load of effort 7 of 10</source>
        <translation>きつさ10中7の負荷</translation>
    </message>
    <message>
        <source>at most %1 % more under 18</source>
        <translation>18歳未満は最大 %1 % 増</translation>
    </message>
    <message>
        <source>at most %1 % more in 28 days</source>
        <translation>28日で最大 %1 % 増</translation>
    </message>
    <message>
        <source>at most %1 % more in 7 days</source>
        <translation>7日で最大 %1 % 増</translation>
    </message>
    <message>
        <source>the load of %1</source>
        <translation>%1 の負荷</translation>
    </message>
    <message>
        <source>First time on this rung: stop adding at effort 7 of 10, whatever the number says.</source>
        <translation>この段は初めて：数字にかかわらず、きつさ10中7で増やすのを止めます。</translation>
    </message>
    <message>
        <source>%1 less today, by the decision.</source>
        <translation>判断により今日は %1 減。</translation>
    </message>
    <message>
        <source>%1 sets of %2 are the rung&apos;s own; %3 and the competitions near leave %4 of that.</source>
        <translation>この段は %2 回を %1 セット。%3と近い競技会で %4 にします。</translation>
    </message>
    <message>
        <source>%1 sets of %2 are the rung&apos;s own.</source>
        <translation>この段は %2 回を %1 セットです。</translation>
    </message>
    <message>
        <source>The decision takes it down to %1.</source>
        <translation>判断により %1 に下げます。</translation>
    </message>
    <message>
        <source>Three repetitions with full intent, at the same load for the whole stay on the rung: the only thing that counts as evidence.</source>
        <translation>段にいる間ずっと同じ負荷で、全力の意図の3回：根拠になるのはこれだけです。</translation>
    </message>
    <message>
        <source>Three jumps with full intent: the only thing that counts as evidence.</source>
        <translation>全力の意図の3回のジャンプ：根拠になるのはこれだけです。</translation>
    </message>
    <message>
        <source>In %1 a set ends when velocity has fallen by %2 from its fastest repetition.</source>
        <translation>%1では、最速の反復から速度が %2 落ちたらセットを終えます。</translation>
    </message>
    <message>
        <source>At most %1 drop-jump contacts today: our limits for a session and for seven days.</source>
        <translation>今日のドロップジャンプの接地は最大 %1 回：1回と7日間の私たちの限度です。</translation>
    </message>
    <message>
        <source>%1 was last lifted %2 days ago: two heavy sets keep its strength.</source>
        <translation>%1 は %2 日前が最後：重い2セットで筋力を保ちます。</translation>
    </message>
    <message>
        <source>%1 was last lifted %2 days ago, longer than it should be: two heavy sets keep its strength.</source>
        <translation>%1 は %2 日前が最後で空きすぎです：重い2セットで筋力を保ちます。</translation>
    </message>
    <message>
        <source>A heavy lift stands on a sprint day, after the run, so that low days stay low.</source>
        <translation>重い種目はスプリントの日、走った後に置き、軽い日を軽く保ちます。</translation>
    </message>
    <message>
        <source>A lifting day of the week.</source>
        <translation>週の種目の日です。</translation>
    </message>
    <message>
        <source>A light, fast ladder: it may stand on any lifting day, before the heavy ones.</source>
        <translation>軽く速いラダー：どの種目の日でも、重いものの前に置けます。</translation>
    </message>
    <message>
        <source>%1 ladders share %2 places a session: it is this one&apos;s turn.</source>
        <translation>%1 のラダーで1回 %2 枠を分け、今はこの番です。</translation>
    </message>
    <message>
        <source>%1 stands in for %2, which loads the place that hurts.</source>
        <translation>痛む所に負荷がかかる %2 の代わりに %1 を行います。</translation>
    </message>
    <message>
        <source>%1 rests: the contacts of these days are done, and drop jumps need %2 days between.</source>
        <translation>%1 は休み：この数日の接地は済み、ドロップジャンプは %2 日空けます。</translation>
    </message>
    <message>
        <source>%1 rests: %2</source>
        <translation>%1 は休み：%2</translation>
    </message>
    <message>
        <source>A primer, light and fast, by choice. It is no evidence.</source>
        <translation>任意の軽く速い刺激。根拠にはなりません。</translation>
    </message>
    <message>
        <source>In the weeks when the bar was quicker within a rung, %1 were better than the season&apos;s trend %2: %3; %4.</source>
        <translation>同じ段の中でバーが速かった週には、%2、%1がシーズンの傾向より良好でした：%3、%4。</translation>
    </message>
    <message>
        <source>It shows that they moved together, not that one caused the other.</source>
        <translation>両者が連動したことを示すだけで、因果関係を示すものではありません。</translation>
    </message>
    <message>
        <source>Not shown: when the bar was quicker within a rung, %1 were not better than the season&apos;s trend by more than chance (at best %2: %3; %4).</source>
        <translation>示されていません：同じ段の中でバーが速かったとき、%1は偶然を超えてシーズンの傾向より良くはなりませんでした（最良は%2：%3、%4）。</translation>
    </message>
    <message>
        <source>The strongest relation goes the other way: when the bar was quicker, times were slower %1 (%2).</source>
        <translation>最も強い関係は逆向きです：バーが速かったとき、%1のタイムは遅くなりました（%2）。</translation>
    </message>
    <message>
        <source>That is no proof that there is no relation.</source>
        <translation>関係がないことの証明ではありません。</translation>
    </message>
    <message>
        <source>Not shown: beside their trends the bar or the sprint times did not vary.</source>
        <translation>示されていません：傾向を除くと、バーまたはスプリントのタイムに変動がありませんでした。</translation>
    </message>
    <message>
        <source>Not enough: %1, on %2, all in the same conditions.</source>
        <translation>データ不足：あと%1（%2）、すべて同じ条件で必要です。</translation>
    </message>
    <message>
        <source>Not enough: %1, all in the same conditions.</source>
        <translation>データ不足：あと%1、すべて同じ条件で必要です。</translation>
    </message>
    <message>
        <source>Not enough: %1, on %2 (%3).</source>
        <translation>データ不足：あと%1（%2、%3）が必要です。</translation>
    </message>
    <message>
        <source>Not enough: %1 (%2).</source>
        <translation>データ不足：あと%1（%2）が必要です。</translation>
    </message>
    <message>
        <source>Each counts in a further week, with the bar measured in that week and the four before.</source>
        <translation>それぞれ別の週に数えられ、その週と前の4週間にバーの測定が必要です。</translation>
    </message>
    <message>
        <source>rank correlation %1 over %2 and %3</source>
        <translation>順位相関 %1（%2、%3）</translation>
    </message>
    <message>
        <source>sprint times (each in its own conditions)</source>
        <translation>スプリントのタイム（それぞれの条件内）</translation>
    </message>
    <message>
        <source>sprint times (%1)</source>
        <translation>スプリントのタイム（%1）</translation>
    </message>
    <message>
        <source>in the same week</source>
        <translation>同じ週</translation>
    </message>
    <message>
        <source>chance alone gives as much in %1 of 100 such seasons</source>
        <translation>偶然だけでも同様のシーズン100回中%1回で同程度になります</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>%1 未満</translation>
    </message>
    <message>
        <source>%1 weeks later</source>
        <translation>%1週間後</translation>
    </message>
    <message>
        <source>%1 week later</source>
        <translation>%1週後</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1週</translation>
    </message>
    <message>
        <source>%1 week</source>
        <translation>%1週</translation>
    </message>
    <message>
        <source>%1 rungs</source>
        <translation>%1段</translation>
    </message>
    <message>
        <source>%1 rung</source>
        <translation>%1段</translation>
    </message>
    <message>
        <source>%1 more tests</source>
        <translation>テスト%1回</translation>
    </message>
    <message>
        <source>%1 more test</source>
        <translation>テスト%1回</translation>
    </message>
    <message>
        <source>%1 more rungs</source>
        <translation>さらに%1段</translation>
    </message>
    <message>
        <source>%1 more rung</source>
        <translation>さらに%1段</translation>
    </message>
    <message>
        <source>That shorter ranges carry over better to sprinting is the working premise of the ladders, with evidence on both sides; one athlete&apos;s season does not settle it.</source>
        <translation>短い可動域ほどスプリントに転移しやすいというのはラダーの作業仮説で、賛否両方の根拠があります。一人の一シーズンでは決まりません。</translation>
    </message>
    <message>
        <source>ankle</source>
        <translation>足首</translation>
    </message>
    <message>
        <source>back</source>
        <translation>背中</translation>
    </message>
    <message>
        <source>calf</source>
        <translation>ふくらはぎ</translation>
    </message>
    <message>
        <source>elbow</source>
        <translation>肘</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>足</translation>
    </message>
    <message>
        <source>groin</source>
        <translation>鼠径部</translation>
    </message>
    <message>
        <source>hamstring</source>
        <translation>ハムストリング</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>股関節</translation>
    </message>
    <message>
        <source>knee</source>
        <translation>膝</translation>
    </message>
    <message>
        <source>neck</source>
        <translation>首</translation>
    </message>
    <message>
        <source>shin</source>
        <translation>すね</translation>
    </message>
    <message>
        <source>shoulder</source>
        <translation>肩</translation>
    </message>
    <message>
        <source>thigh</source>
        <translation>太もも</translation>
    </message>
    <message>
        <source>wrist</source>
        <translation>手首</translation>
    </message>
    <message>
        <source>milliseconds</source>
        <translation>ミリ秒</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>秒</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>メートル</translation>
    </message>
    <message>
        <source>metres per second</source>
        <translation>メートル毎秒</translation>
    </message>
    <message>
        <source>metres a second</source>
        <translation>メートル毎秒</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>キログラム</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>ポンド</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>週</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lies before the season has begun</source>
        <translation>「%1」はシーズン開始前です</translation>
    </message>
    <message>
        <source>&quot;%1&quot; lies after the season&apos;s end</source>
        <translation>「%1」はシーズン終了後です</translation>
    </message>
    <message>
        <source>a season is at most %1 days long</source>
        <translation>シーズンは最長%1日です</translation>
    </message>
    <message>
        <source>a season needs at least one competition</source>
        <translation>シーズンには少なくとも1つの試合が必要です</translation>
    </message>
    <message>
        <source>mark at least one competition with &quot;main&quot;: true</source>
        <translation>主要な試合が少なくとも1つ必要です（&quot;main&quot;: true）</translation>
    </message>
    <message>
        <source>name at least one day of the week with lifts</source>
        <translation>種目を行う曜日を少なくとも1日選んでください</translation>
    </message>
    <message>
        <source>choose at least one ladder</source>
        <translation>ラダーを少なくとも1つ選んでください</translation>
    </message>
    <message>
        <source>no drop jumps under %1; leave this ladder out</source>
        <translation>%1歳未満はドロップジャンプ禁止です。このラダーを外してください</translation>
    </message>
    <message>
        <source>under %1 no lifting is planned: children take part from about that age, when they can follow instructions</source>
        <translation>%1歳未満には筋力トレーニングを計画しません。指示に従えるおよそその年齢から参加します</translation>
    </message>
    <message>
        <source>under 18 a guardian must have agreed before a plan is made</source>
        <translation>18歳未満は計画の前に保護者の同意が必要です</translation>
    </message>
    <message>
        <source>under 18 lifts stand on at most three days a week; choose fewer days</source>
        <translation>18歳未満の種目は週3日までです。日数を減らしてください</translation>
    </message>
    <message>
        <source>under 18 lifting days must not follow each other; leave a day between</source>
        <translation>18歳未満は連続した日に種目を行えません。間を1日空けてください</translation>
    </message>
    <message>
        <source>the block ends before it begins</source>
        <translation>終わりが始まりより前です</translation>
    </message>
    <message>
        <source>the block must lie inside the season</source>
        <translation>期間はシーズン内でなければなりません</translation>
    </message>
    <message>
        <source>two blocks of the same kind share days; make one of them</source>
        <translation>同じ種類の期間が重なっています。1つにまとめてください</translation>
    </message>
    <message>
        <source>%1 minutes hold %2 primary lifts; choose fewer, or say why in lifts_per_session_override</source>
        <translation>%1分には主要種目%2つが収まります。減らすか、lifts_per_session_override に理由を書いてください</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a longer range than the rung above it; longest range first</source>
        <translation>「%1」の可動域が上の段より長いです。長いものから順に並べます</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has earlier phases than the rung above it</source>
        <translation>「%1」の期が上の段より早いです</translation>
    </message>
    <message>
        <source>the latest phase must not come before the earliest</source>
        <translation>最も遅い期が最も早い期より前です</translation>
    </message>
    <message>
        <source>there is no such rung</source>
        <translation>その段はありません</translation>
    </message>
    <message>
        <source>the ladder must join inside the season</source>
        <translation>ラダーはシーズン内に加えなければなりません</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>書き込めません：%1</translation>
    </message>
    <message>
        <source>cannot be read: %1</source>
        <translation>読み込めません：%1</translation>
    </message>
    <message>
        <source>the report cannot be written here (%1); choose another folder</source>
        <translation>ここには報告書を書き込めません（%1）。別のフォルダーを選んでください</translation>
    </message>
    <message>
        <source>the report could not be finished (%1); free some space or choose another folder</source>
        <translation>報告書を完成できませんでした（%1）。空きを増やすか別のフォルダーを選んでください</translation>
    </message>
    <message>
        <source>the report could not be set; nothing was written</source>
        <translation>報告書を組めませんでした。何も書き込まれていません</translation>
    </message>
</context>
<context>
    <name>EvidenceRow</name>
    <message>
        <source>met</source>
        <translation>達成</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>未達成</translation>
    </message>
    <message>
        <source>for show</source>
        <translation>参考</translation>
    </message>
    <message>
        <source>%1: %2, allowed %3, %4</source>
        <translation>%1：%2、許容 %3、%4</translation>
    </message>
</context>
<context>
    <name>ExplainSheet</name>
    <message>
        <source>What it is</source>
        <translation>これは何か</translation>
    </message>
    <message>
        <source>How sure: %1</source>
        <translation>確かさ：%1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>出典：%1</translation>
    </message>
</context>
<context>
    <name>FindSensorsSheet</name>
    <message>
        <source>Find a sensor</source>
        <translation>センサーを探す</translation>
    </message>
    <message>
        <source>Name it</source>
        <translation>名前を付ける</translation>
    </message>
    <message>
        <source>Search again</source>
        <translation>もう一度探す</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>もう一度試す</translation>
    </message>
    <message>
        <source>Switch the sensor on.</source>
        <translation>センサーの電源を入れる。</translation>
    </message>
    <message>
        <source>Shake it: many sleep until they are moved.</source>
        <translation>振る：動かすまで眠るものが多いです。</translation>
    </message>
    <message>
        <source>Hold it near this phone.</source>
        <translation>この端末に近づける。</translation>
    </message>
    <message>
        <source>Close other programs that use it.</source>
        <translation>使っている他のプログラムを閉じる。</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>名前の一部</translation>
    </message>
    <message>
        <source>Where it is worn</source>
        <translation>着ける場所</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>Stop searching</source>
        <translation>探すのをやめる</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>探す</translation>
    </message>
    <message>
        <source>Teach it</source>
        <translation>教える</translation>
    </message>
    <message>
        <source>Listen again</source>
        <translation>もう一度聞く</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>一覧に戻る</translation>
    </message>
</context>
<context>
    <name>FormsWords</name>
    <message>
        <source>Type a number.</source>
        <translation>数字を入力してください。</translation>
    </message>
    <message>
        <source>This is not a number. Digits, with a point or a comma.</source>
        <translation>数字ではありません。点かコンマ付きの数字で。</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>%1 から %2 の間。</translation>
    </message>
    <message>
        <source>A whole number.</source>
        <translation>整数で。</translation>
    </message>
    <message>
        <source>This cannot stay empty.</source>
        <translation>空欄にできません。</translation>
    </message>
    <message>
        <source>Type a day, like %1.</source>
        <translation>日付を入力してください（例 %1）。</translation>
    </message>
    <message>
        <source>There is no such day. Type it like %1.</source>
        <translation>その日付はありません。%1 のように入力してください。</translation>
    </message>
</context>
<context>
    <name>FoundRow</name>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
</context>
<context>
    <name>FoundWords</name>
    <message>
        <source>No name (%1)</source>
        <translation>名前なし（%1）</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>保存済み</translation>
    </message>
    <message>
        <source>Likely a motion sensor</source>
        <translation>動作センサーらしい</translation>
    </message>
</context>
<context>
    <name>HelpWords</name>
    <message>
        <source>Time to peak velocity</source>
        <translation>最大速度到達時間</translation>
    </message>
    <message>
        <source>From the instant the bar begins to rise to the instant it is fastest. The season&apos;s evidence: on one rung, at one load, it should come sooner.</source>
        <translation>バーが上がり始めてから最も速くなるまで。シーズンの根拠です：同じ段、同じ負荷で、早くなるはずです。</translation>
    </message>
    <message>
        <source>instant of peak velocity − instant of concentric start</source>
        <translation>最大速度の瞬間 − 上げ始めの瞬間</translation>
    </message>
    <message>
        <source>Common practice, no source.</source>
        <translation>一般的な慣行、出典なし。</translation>
    </message>
    <message>
        <source>Target band and contact times</source>
        <translation>目標帯と接地時間</translation>
    </message>
    <message>
        <source>The band is where time to peak velocity usually lies on this rung. The pale bands are contact times of a sprint, for scale and no goal.</source>
        <translation>この段で通常とる時間の範囲です。薄い帯はスプリントの接地時間で、目安であって目標ではありません。</translation>
    </message>
    <message>
        <source>A starting value of this project, later your own values.</source>
        <translation>このプロジェクトの開始値、後にあなた自身の値。</translation>
    </message>
    <message>
        <source>A guide: your own line on the rung counts.</source>
        <translation>目安です：段でのあなた自身の線が大切です。</translation>
    </message>
    <message>
        <source>Mean velocity</source>
        <translation>平均速度</translation>
    </message>
    <message>
        <source>How fast the bar rose on average, from its start to its end.</source>
        <translation>バーが始めから終わりまで平均どれだけ速く上がったか。</translation>
    </message>
    <message>
        <source>way of the concentric phase ÷ its duration</source>
        <translation>挙上の距離 ÷ その時間</translation>
    </message>
    <message>
        <source>About 4 mm/s rms in simulated sets; a day&apos;s value wanders by about 0.04 m/s.</source>
        <translation>模擬セットで約 4 mm/s。日ごとに約 0.04 m/s 揺れます。</translation>
    </message>
    <message>
        <source>Peak velocity</source>
        <translation>最大速度</translation>
    </message>
    <message>
        <source>The greatest speed of the bar on its way up. Told for lifts that throw or catch.</source>
        <translation>上がる途中のバーの最高の速さ。投げる、受ける種目で示します。</translation>
    </message>
    <message>
        <source>About 7 mm/s rms in simulated sets; against cameras 24 mm/s.</source>
        <translation>模擬セットで約 7 mm/s。カメラとの比較で 24 mm/s。</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>可動域</translation>
    </message>
    <message>
        <source>The vertical way of the bar. A rung of the ladder asks for its own range; a repetition well below the set&apos;s median is flagged as partial.</source>
        <translation>バーの上下の距離。段ごとに決まった範囲があり、セットの中央値を大きく下回る反復は部分的と示します。</translation>
    </message>
    <message>
        <source>About 3 mm in simulated sets, 15 mm against cameras.</source>
        <translation>模擬セットで約 3 mm、カメラとの比較で 15 mm。</translation>
    </message>
    <message>
        <source>Velocity loss</source>
        <translation>速度低下</translation>
    </message>
    <message>
        <source>How much slower the last repetition was than the fastest of the set. The set ends at the loss that the phase allows, however many repetitions that are.</source>
        <translation>セットで最も速い反復に比べ、最後の反復がどれだけ遅いか。回数によらず、その期で許される低下でセットを終えます。</translation>
    </message>
    <message>
        <source>1 − last mean velocity ÷ fastest mean velocity</source>
        <translation>1 − 最後の平均速度 ÷ 最速の平均速度</translation>
    </message>
    <message>
        <source>Common practice, no source; the limits are starting values of this project.</source>
        <translation>一般的な慣行、出典なし。限度はこのプロジェクトの開始値。</translation>
    </message>
    <message>
        <source>Two repetitions of the same effort differ by a few hundredths of a metre per second.</source>
        <translation>同じ努力の反復でも毎秒数センチメートル違います。</translation>
    </message>
    <message>
        <source>Repetitions left</source>
        <translation>残りの回数</translation>
    </message>
    <message>
        <source>A guess from the loss of velocity: how many more could have been done.</source>
        <translation>速度低下からの推測：あと何回できたか。</translation>
    </message>
    <message>
        <source>left = done × (1 ÷ share − 1), share = loss ÷ loss at half ÷ 2</source>
        <translation>残り = 済み × (1 ÷ 割合 − 1)、割合 = 低下 ÷ 半分での低下 ÷ 2</translation>
    </message>
    <message>
        <source>Starting values of this project; with five sets of your own, yours.</source>
        <translation>このプロジェクトの開始値。あなたのセットが5つあればあなたの値。</translation>
    </message>
    <message>
        <source>Wide: the range is shown. The stop of a set never rests on it.</source>
        <translation>幅は広く、範囲を示します。セットの終了はこれによりません。</translation>
    </message>
    <message>
        <source>What a decision rests on</source>
        <translation>判断のもと</translation>
    </message>
    <message>
        <source>Step, hold, step back, ease or rest: each line is one test with its value and what is allowed. A step needs sessions and days on the rung, a time to peak that came down by more than it wanders, and velocity and strength that held.</source>
        <translation>進む、維持、戻る、軽くする、休む：各行が値と許容を持つ検査です。進むには、段での練習数と日数、揺れを超えて縮んだ到達時間、保たれた速度と筋力が必要です。</translation>
    </message>
    <message>
        <source>Rules of this project, each with its origin in the program&apos;s rules.</source>
        <translation>このプロジェクトの規則。由来は規則に記載。</translation>
    </message>
    <message>
        <source>A rule is no proof. Your answer is kept with it, and counts.</source>
        <translation>規則は証明ではありません。あなたの答えがともに残り、優先されます。</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>典型誤差</translation>
    </message>
    <message>
        <source>How far a session&apos;s value wanders by itself, from one session to the next. A change counts only beyond it.</source>
        <translation>練習ごとの値が自然にどれだけ揺れるか。変化はそれを超えて初めて数えます。</translation>
    </message>
    <message>
        <source>standard deviation of differences of successive sessions ÷ √2</source>
        <translation>続く練習の差の標準偏差 ÷ √2</translation>
    </message>
    <message>
        <source>Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000.</source>
        <translation>Hopkins, Measures of reliability in sports medicine and science, Sports Med 2000.</translation>
    </message>
    <message>
        <source>It begins with a prior and becomes yours with the sessions.</source>
        <translation>初めは事前の値で、練習とともにあなたの値になります。</translation>
    </message>
    <message>
        <source>A trend over the season</source>
        <translation>シーズンの推移</translation>
    </message>
    <message>
        <source>Each point is a session&apos;s probe set. Only points on the same rung are to be compared: a shorter range is quicker anyway.</source>
        <translation>各点は練習の確認セットです。比べられるのは同じ段の点だけ：短い可動域はもともと速いからです。</translation>
    </message>
    <message>
        <source>Lines are Theil-Sen lines (Theil 1950, Sen 1968): one bad day does not move them.</source>
        <translation>線は Theil-Sen（Theil 1950、Sen 1968）：悪い一日では動きません。</translation>
    </message>
    <message>
        <source>Look at several weeks, never at one point.</source>
        <translation>一点ではなく数週間を見てください。</translation>
    </message>
    <message>
        <source>Load and velocity</source>
        <translation>負荷と速度</translation>
    </message>
    <message>
        <source>Heavier is slower, nearly along a line that is your own on each lift and rung.</source>
        <translation>重いほど遅く、種目と段ごとにあなた固有のほぼ直線に沿います。</translation>
    </message>
    <message>
        <source>velocity = a + b × load, least squares and robust</source>
        <translation>速度 = a + b × 負荷、最小二乗法と頑健法</translation>
    </message>
    <message>
        <source>Two loads far apart and a third between make it steady.</source>
        <translation>離れた2つの負荷と間の1つで安定します。</translation>
    </message>
    <message>
        <source>Estimated 1RM</source>
        <translation>推定 1RM</translation>
    </message>
    <message>
        <source>The load at which the line meets the velocity that is published for one repetition at most. Never load it to see whether it is right.</source>
        <translation>1回しか挙がらない速度として公表された値に線が届く負荷。確かめるために載せてはいけません。</translation>
    </message>
    <message>
        <source>load where the line meets the velocity at 1RM; interval after Fieller</source>
        <translation>線が 1RM の速度に届く負荷。区間は Fieller の方法</translation>
    </message>
    <message>
        <source>Velocities at 1RM: published for a few lifts, named beside the number.</source>
        <translation>1RM の速度：いくつかの種目で公表、数値の横に示します。</translation>
    </message>
    <message>
        <source>Its 95 % interval is shown; people also differ in the velocity itself.</source>
        <translation>95 % 区間を示します。速度そのものにも個人差があります。</translation>
    </message>
    <message>
        <source>Warm-up check</source>
        <translation>ウォームアップ確認</translation>
    </message>
    <message>
        <source>The velocity at two warm-up loads against your own at these loads. It can take load or sets off today, never put any on.</source>
        <translation>2つのウォームアップ負荷での速度を、同じ負荷でのあなたの速度と比べます。今日の負荷やセットを減らすだけで、増やしません。</translation>
    </message>
    <message>
        <source>A rule of this project.</source>
        <translation>このプロジェクトの規則。</translation>
    </message>
    <message>
        <source>A loss counts where both loads are slower by more than the typical error.</source>
        <translation>両方の負荷が典型誤差を超えて遅いときだけ数えます。</translation>
    </message>
    <message>
        <source>Contact and flight</source>
        <translation>接地と滞空</translation>
    </message>
    <message>
        <source>How long the foot is on the ground, and how long in the air after it. Contacts up to 250 ms count as fast.</source>
        <translation>足が地面にある時間と、その後空中にある時間。250 ms までの接地を速いとします。</translation>
    </message>
    <message>
        <source>Schmidtbleicher 1992, in Komi (ed), Strength and Power in Sport; from memory.</source>
        <translation>Schmidtbleicher 1992、Komi 編 Strength and Power in Sport、記憶による。</translation>
    </message>
    <message>
        <source>From video of 240 pictures a second ± 4 ms.</source>
        <translation>毎秒240コマの動画から ± 4 ms。</translation>
    </message>
    <message>
        <source>Jump height</source>
        <translation>ジャンプの高さ</translation>
    </message>
    <message>
        <source>How high the body rose, from how long it flew.</source>
        <translation>体が上がった高さ、滞空した時間から。</translation>
    </message>
    <message>
        <source>height = g × flight² ÷ 8</source>
        <translation>高さ = g × 滞空² ÷ 8</translation>
    </message>
    <message>
        <source>Bosco, Luhtanen, Komi 1983, Eur J Appl Physiol 50:273-282; from memory.</source>
        <translation>Bosco、Luhtanen、Komi 1983、Eur J Appl Physiol 50:273-282、記憶による。</translation>
    </message>
    <message>
        <source>It holds where the body lands as it took off: bent knees make it too high.</source>
        <translation>離地と同じ姿勢で着地する場合に成り立ちます：膝を曲げると高く出ます。</translation>
    </message>
    <message>
        <source>Reactive strength index, RSI</source>
        <translation>反応筋力指数 RSI</translation>
    </message>
    <message>
        <source>Height for the time on the ground: high and quick together.</source>
        <translation>接地時間あたりの高さ：高さと速さを合わせて。</translation>
    </message>
    <message>
        <source>RSI = height ÷ contact time</source>
        <translation>RSI = 高さ ÷ 接地時間</translation>
    </message>
    <message>
        <source>Healy, Kenny, Harrison 2017, doi:10.1123/ijspp.2017-0511.</source>
        <translation>Healy、Kenny、Harrison 2017、doi:10.1123/ijspp.2017-0511。</translation>
    </message>
    <message>
        <source>A day&apos;s value wanders by about 7 %.</source>
        <translation>日ごとに約 7 % 揺れます。</translation>
    </message>
    <message>
        <source>Top speed and time constant</source>
        <translation>最高速度と時定数</translation>
    </message>
    <message>
        <source>The speed that the splits point to, and how soon it is reached: after one time constant 63 % of it, after three 95 %.</source>
        <translation>通過タイムが示す速度と、達する早さ：時定数1つで 63 %、3つで 95 %。</translation>
    </message>
    <message>
        <source>v(t) = top speed × (1 − exp(−t ÷ τ)), fitted to the splits</source>
        <translation>v(t) = 最高速度 × (1 − exp(−t ÷ τ))、通過タイムに当てはめ</translation>
    </message>
    <message>
        <source>Furusawa, Hill, Parkinson 1927; on splits Samozino et al. 2016, doi:10.1111/sms.12490.</source>
        <translation>Furusawa、Hill、Parkinson 1927。通過タイムでは Samozino ら 2016、doi:10.1111/sms.12490。</translation>
    </message>
    <message>
        <source>One standard error stands beside it. The model is no exact law.</source>
        <translation>横に標準誤差を示します。このモデルは厳密な法則ではありません。</translation>
    </message>
    <message>
        <source>Force and power of a sprint</source>
        <translation>スプリントの力とパワー</translation>
    </message>
    <message>
        <source>Horizontal force and power from the speed curve, your mass and the drag of the air.</source>
        <translation>速度曲線、体重、空気抵抗から求めた水平の力とパワー。</translation>
    </message>
    <message>
        <source>F = m × acceleration + k × (v − wind)²; P = F × v</source>
        <translation>F = m × 加速度 + k × (v − 風)²、P = F × v</translation>
    </message>
    <message>
        <source>Samozino et al. 2016, doi:10.1111/sms.12490; equations from memory.</source>
        <translation>Samozino ら 2016、doi:10.1111/sms.12490、式は記憶による。</translation>
    </message>
    <message>
        <source>As sure as the curve; what was not typed (air, wind) is assumed and said.</source>
        <translation>曲線と同じ確かさ。未入力のもの（空気、風）は仮定し、そう示します。</translation>
    </message>
    <message>
        <source>Flying speed</source>
        <translation>加速走の速度</translation>
    </message>
    <message>
        <source>Mean speed over a zone that is entered at full speed.</source>
        <translation>全速で入る区間の平均速度。</translation>
    </message>
    <message>
        <source>zone ÷ time</source>
        <translation>区間 ÷ タイム</translation>
    </message>
    <message>
        <source>By hand a flying 20 m is 7 % off; gates and video are told beside it.</source>
        <translation>手動では加速走 20 m で 7 % ずれます。光電管や動画は横に示します。</translation>
    </message>
    <message>
        <source>Wind-aided</source>
        <translation>追い風参考</translation>
    </message>
    <message>
        <source>More than 2.0 m/s of wind from behind in a competition: the time is no best.</source>
        <translation>競技会で追い風 2.0 m/s を超えると、ベストになりません。</translation>
    </message>
    <message>
        <source>World Athletics&apos; technical rules; from memory.</source>
        <translation>World Athletics 技術規則、記憶による。</translation>
    </message>
    <message>
        <source>As the reading of the wind gauge.</source>
        <translation>風速計の読みのとおり。</translation>
    </message>
    <message>
        <source>Fast metres</source>
        <translation>高速の距離</translation>
    </message>
    <message>
        <source>Metres run at 90 and at 95 % of the best speed of the last 12 months, or above.</source>
        <translation>直近12か月の最高速度の 90 % と 95 % 以上で走った距離。</translation>
    </message>
    <message>
        <source>Common practice, no source; the shares are this project&apos;s.</source>
        <translation>一般的な慣行、出典なし。割合はこのプロジェクトのもの。</translation>
    </message>
    <message>
        <source>&quot;About&quot; stands where part of it is estimated from distance and time, or from effort.</source>
        <translation>「約」は、一部を距離とタイム、またはきつさから推定したときに付きます。</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>効果はあったか？</translation>
    </message>
    <message>
        <source>Whether the bar&apos;s quickness and the sprint times moved together beyond their trends. Never called cause.</source>
        <translation>バーの速さとスプリントのタイムが、傾向を除いてもともに動いたか。原因とは決して言いません。</translation>
    </message>
    <message>
        <source>Spearman&apos;s rank correlation at five lags, against turned seasons</source>
        <translation>5つのずれでの Spearman 順位相関を、回したシーズンと比較</translation>
    </message>
    <message>
        <source>Spearman 1904, Am J Psychol 15:72-101; the test is this project&apos;s.</source>
        <translation>Spearman 1904、Am J Psychol 15:72-101。検定はこのプロジェクトのもの。</translation>
    </message>
    <message>
        <source>Without any relation it speaks in about 3 of 100 seasons.</source>
        <translation>関係がまったくなくても100シーズン中約3で示されます。</translation>
    </message>
    <message>
        <source>About 2 to 6 ms rms in simulated sets. A repetition with two peaks is no evidence. It is not a stance&apos;s force peak.</source>
        <translation>模擬セットで約 2～6 ms（二乗平均平方根）。山が二つの反復は根拠になりません。接地中の力の頂点とは別のものです。</translation>
    </message>
</context>
<context>
    <name>ImportLook</name>
    <message>
        <source>As it will be read</source>
        <translation>読み取り結果</translation>
    </message>
    <message>
        <source>Athletes</source>
        <translation>選手</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>種目</translation>
    </message>
    <message>
        <source>Rows that cannot be read</source>
        <translation>読めない行</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>列</translation>
    </message>
    <message>
        <source>Day of all rows, like %1</source>
        <translation>全行の日付（例 %1）</translation>
    </message>
</context>
<context>
    <name>ImportPickSheet</name>
    <message>
        <source>The gate stands at, m</source>
        <translation>計測点の位置、m</translation>
    </message>
    <message>
        <source>Between 0 and 1000 m.</source>
        <translation>0～1000 m の間。</translation>
    </message>
    <message>
        <source>Take this distance</source>
        <translation>この距離にする</translation>
    </message>
</context>
<context>
    <name>ImportSheet</name>
    <message>
        <source>Import sets</source>
        <translation>セットの取り込み</translation>
    </message>
    <message>
        <source>Import runs</source>
        <translation>走りの取り込み</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>%1 から</translation>
    </message>
    <message>
        <source>Put the table as a CSV file into %1, then look again.</source>
        <translation>表をCSVファイルとして %1 に置き、もう一度見てください。</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>もう一度見る</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>別のファイルを選ぶ</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
</context>
<context>
    <name>ImportWords</name>
    <message>
        <source>Not read</source>
        <translation>読まない</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>選手</translation>
    </message>
    <message>
        <source>Athlete&apos;s identifier</source>
        <translation>選手の識別子</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>日</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>時刻</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Effort, 1 to 10</source>
        <translation>きつさ、1～10</translation>
    </message>
    <message>
        <source>Key of the row</source>
        <translation>行のキー</translation>
    </message>
    <message>
        <source>Number of the run or set</source>
        <translation>走りかセットの番号</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>通過タイム</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>距離</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>タイム</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>風</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>計時</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>スタート</translation>
    </message>
    <message>
        <source>Run-in</source>
        <translation>助走</translation>
    </message>
    <message>
        <source>Reaction</source>
        <translation>反応時間</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>走路</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>シューズ</translation>
    </message>
    <message>
        <source>Name of the test</source>
        <translation>テスト名</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>気温</translation>
    </message>
    <message>
        <source>Competition, yes or no</source>
        <translation>競技会、はい・いいえ</translation>
    </message>
    <message>
        <source>Trial of a test day, yes or no</source>
        <translation>テスト日の試技、はい・いいえ</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>接地時間</translation>
    </message>
    <message>
        <source>Step length</source>
        <translation>ストライド</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>種目</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>負荷</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>最大速度到達時間</translation>
    </message>
    <message>
        <source>Mean velocity</source>
        <translation>平均速度</translation>
    </message>
    <message>
        <source>Peak velocity</source>
        <translation>最大速度</translation>
    </message>
    <message>
        <source>Range of motion</source>
        <translation>可動域</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>左右</translation>
    </message>
    <message>
        <source>Rung</source>
        <translation>段</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>セットの種類</translation>
    </message>
    <message>
        <source>Height of the box</source>
        <translation>台の高さ</translation>
    </message>
    <message>
        <source>Split at %1</source>
        <translation>%1 の通過タイム</translation>
    </message>
    <message>
        <source>Split, distance not known</source>
        <translation>通過タイム、距離不明</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>Nothing to add is known in this file yet. Tap the columns below and say what they mean.</source>
        <translation>このファイルで追加できるものがまだ分かりません。下の列をタップして意味を選んでください。</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. What is the decimal mark?</source>
        <translation>「%1」は二通りに読めます。小数点はどれですか？</translation>
    </message>
    <message>
        <source>“%1” can be read in two ways. What comes first?</source>
        <translation>「%1」は二通りに読めます。先に来るのは？</translation>
    </message>
    <message>
        <source>The file has no dates. On which day was it?</source>
        <translation>日付がありません。何日のものですか？</translation>
    </message>
    <message>
        <source>At how many metres stands the gate of “%1”? Tap the column below.</source>
        <translation>「%1」の計測点は何mですか？下の列をタップしてください。</translation>
    </message>
    <message>
        <source>In which unit are the loads of “%1”?</source>
        <translation>「%1」の負荷の単位は？</translation>
    </message>
    <message>
        <source>Rows above the header, left out: %1.</source>
        <translation>見出しより上の行を除外：%1。</translation>
    </message>
    <message>
        <source>The file has no header: its first row is read like the others.</source>
        <translation>見出しがありません：1行目も同じように読みます。</translation>
    </message>
    <message>
        <source>The decimal mark is a comma, as in %1.</source>
        <translation>小数点はコンマ（%1）。</translation>
    </message>
    <message>
        <source>Times are in milliseconds, by their size: %1.</source>
        <translation>大きさからタイムはミリ秒：%1。</translation>
    </message>
    <message>
        <source>The times do not rise (%1): each counts from the gate before.</source>
        <translation>タイムが増えません（%1）：それぞれ前の計測点から。</translation>
    </message>
    <message>
        <source>The times rise (%1): each counts from the start.</source>
        <translation>タイムが増えます（%1）：それぞれスタートから。</translation>
    </message>
    <message>
        <source>Several rows make one run.</source>
        <translation>複数の行で1本の走り。</translation>
    </message>
    <message>
        <source>The day comes before the month, as in %1.</source>
        <translation>日が月より先（%1）。</translation>
    </message>
    <message>
        <source>The month comes before the day, as in %1.</source>
        <translation>月が日より先（%1）。</translation>
    </message>
    <message>
        <source>More cells than the header has.</source>
        <translation>見出しより列が多いです。</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>「%1」は数字ではありません。</translation>
    </message>
    <message>
        <source>“%1” cannot be. Check the number and the unit.</source>
        <translation>「%1」はあり得ません。数字と単位を確かめてください。</translation>
    </message>
    <message>
        <source>The day is missing.</source>
        <translation>日がありません。</translation>
    </message>
    <message>
        <source>“%1” is not a day.</source>
        <translation>「%1」は日付ではありません。</translation>
    </message>
    <message>
        <source>“%1” has not come yet. Check the order of day and month.</source>
        <translation>「%1」はまだ来ていません。日と月の順を確かめてください。</translation>
    </message>
    <message>
        <source>“%1” is not a time of day.</source>
        <translation>「%1」は時刻ではありません。</translation>
    </message>
    <message>
        <source>The time is missing.</source>
        <translation>タイムがありません。</translation>
    </message>
    <message>
        <source>The time has no distance.</source>
        <translation>タイムに距離がありません。</translation>
    </message>
    <message>
        <source>The times do not rise with the distance.</source>
        <translation>タイムが距離とともに増えません。</translation>
    </message>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>それほど速く走った人はいません。距離とタイムを確かめてください。</translation>
    </message>
    <message>
        <source>A time before this one is missing.</source>
        <translation>この前のタイムがありません。</translation>
    </message>
    <message>
        <source>A split lies behind the end of the run.</source>
        <translation>通過タイムが走りの終わりより先にあります。</translation>
    </message>
    <message>
        <source>The split at the end says another time.</source>
        <translation>最後の通過タイムが別のタイムです。</translation>
    </message>
    <message>
        <source>The lift is missing.</source>
        <translation>種目がありません。</translation>
    </message>
    <message>
        <source>The repetitions are missing.</source>
        <translation>回数がありません。</translation>
    </message>
</context>
<context>
    <name>JumpSheet</name>
    <message>
        <source>Add jumps</source>
        <translation>ジャンプを追加</translation>
    </message>
    <message>
        <source>Kind of jump</source>
        <translation>ジャンプの種類</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>ドロップジャンプ</translation>
    </message>
    <message>
        <source>Counter-movement</source>
        <translation>反動あり</translation>
    </message>
    <message>
        <source>Squat jump</source>
        <translation>反動なし</translation>
    </message>
    <message>
        <source>Standing long</source>
        <translation>立幅跳</translation>
    </message>
    <message>
        <source>Bounds</source>
        <translation>バウンディング</translation>
    </message>
    <message>
        <source>Box height, %1</source>
        <translation>台の高さ、%1</translation>
    </message>
    <message>
        <source>How many in a row</source>
        <translation>連続回数</translation>
    </message>
    <message>
        <source>Contact time, ms</source>
        <translation>接地時間、ms</translation>
    </message>
    <message>
        <source>Flight time, ms (or the height below)</source>
        <translation>滞空時間、ms（または下の高さ）</translation>
    </message>
    <message>
        <source>Height, %1</source>
        <translation>高さ、%1</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>距離、m</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>試技</translation>
    </message>
    <message>
        <source>Take the last trial off</source>
        <translation>最後の試技を外す</translation>
    </message>
    <message>
        <source>Add another trial</source>
        <translation>試技をもう1本追加</translation>
    </message>
    <message>
        <source>Is it one of these?</source>
        <translation>当てはまりますか？</translation>
    </message>
    <message>
        <source>Trial of a test day</source>
        <translation>テスト日の試技</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>少なく</translation>
    </message>
    <message>
        <source>More</source>
        <translation>もっと</translation>
    </message>
    <message>
        <source>Surface, shoes, note</source>
        <translation>走路、シューズ、メモ</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>走路</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>トラック</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>室内</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>芝</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>シューズ</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>スパイク</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>フラット</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>指定なし</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
    <message>
        <source>Save the jumps</source>
        <translation>ジャンプを保存</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>日付（例 %1）</translation>
    </message>
</context>
<context>
    <name>LadderPage</name>
    <message>
        <source>Ladder</source>
        <translation>ラダー</translation>
    </message>
    <message>
        <source>Steps and their evidence</source>
        <translation>各段とその根拠</translation>
    </message>
    <message>
        <source>Plan a season</source>
        <translation>シーズンを組む</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>チームへ</translation>
    </message>
    <message>
        <source>Change the season</source>
        <translation>シーズンを変更</translation>
    </message>
    <message>
        <source>Season report as PDF</source>
        <translation>シーズンレポート（PDF）</translation>
    </message>
    <message>
        <source>All numbers as CSV tables</source>
        <translation>全数値（CSV表）</translation>
    </message>
    <message>
        <source>Hand out as a calendar</source>
        <translation>カレンダーとして渡す</translation>
    </message>
    <message>
        <source>Why shorter ranges? Both sides</source>
        <translation>なぜ短い可動域？両側の根拠</translation>
    </message>
    <message>
        <source>Follow</source>
        <translation>従う</translation>
    </message>
    <message>
        <source>Decide otherwise</source>
        <translation>別の判断をする</translation>
    </message>
    <message>
        <source>Both sides of the evidence</source>
        <translation>両側の根拠</translation>
    </message>
</context>
<context>
    <name>LadderRow</name>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 を変更</translation>
    </message>
    <message>
        <source>%1 one place up</source>
        <translation>%1 を1つ上へ</translation>
    </message>
</context>
<context>
    <name>LoadChartSheet</name>
    <message>
        <source>Loads by the chart</source>
        <translation>表による負荷</translation>
    </message>
    <message>
        <source>1RM, %1</source>
        <translation>1RM、%1</translation>
    </message>
    <message>
        <source>Type what you can lift once. A set of up to ten repetitions typed in tells it roughly.</source>
        <translation>1回だけ挙げられる重さを入力します。10回までのセットを入力してもおよそ分かります。</translation>
    </message>
    <message>
        <source>Source: NSCA training load chart. At 80 % of 1RM people differ by many repetitions, so the plan goes by how fast the bar moves, not by this.</source>
        <translation>出典：NSCA の負荷表。1RM の 80 % での回数は人により大きく違うため、計画はこれではなくバーの速さで進めます。</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Fleetrung</source>
        <translation>Fleetrung</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>戻す</translation>
    </message>
</context>
<context>
    <name>MapSheet</name>
    <message>
        <source>Take in a file</source>
        <translation>ファイルを取り込む</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>読み方</translation>
    </message>
    <message>
        <source>A sensor map says what each byte means. It was chosen by itself; choose another only where the numbers look wrong.</source>
        <translation>センサー記述は各バイトの意味を示します。自動で選ばれています。数値がおかしいときだけ別のものを選んでください。</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>%1 から</translation>
    </message>
    <message>
        <source>Put the file of the sensor map (its name ends in .json) into %1, then look again.</source>
        <translation>センサー記述のファイル（名前の末尾が .json）を %1 に置き、もう一度見てください。</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>もう一度見る</translation>
    </message>
    <message>
        <source>Hand out this map as a file</source>
        <translation>この記述をファイルで渡す</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>一覧に戻る</translation>
    </message>
</context>
<context>
    <name>MarkedLine</name>
    <message>
        <source>Caution: %1</source>
        <translation>注意：%1</translation>
    </message>
</context>
<context>
    <name>NothingLeft</name>
    <message>
        <source>Clear the filters</source>
        <translation>絞り込みを外す</translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Close the message</source>
        <translation>メッセージを閉じる</translation>
    </message>
</context>
<context>
    <name>NumberRow</name>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1：%2、%3</translation>
    </message>
</context>
<context>
    <name>OtherSetSheet</name>
    <message>
        <source>Load, %1 (0 for body mass)</source>
        <translation>負荷、%1（自体重は0）</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (optional)</source>
        <translation>きつさ、1楽～10全力（任意）</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>セットを保存</translation>
    </message>
</context>
<context>
    <name>OwnLadderSheet</name>
    <message>
        <source>A ladder of your own</source>
        <translation>自分のラダー</translation>
    </message>
    <message>
        <source>Change the ladder</source>
        <translation>ラダーを変更</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>Rungs, longest range first</source>
        <translation>段（可動域の長い順）</translation>
    </message>
    <message>
        <source>Add a rung</source>
        <translation>段を追加</translation>
    </message>
    <message>
        <source>What kind of lift it is</source>
        <translation>種目の性質</translation>
    </message>
    <message>
        <source>Heavy: one such ladder steps in seven days</source>
        <translation>高重量：7日間に進めるのは1つだけ</translation>
    </message>
    <message>
        <source>Left and right apart</source>
        <translation>左右別々</translation>
    </message>
    <message>
        <source>What it loads: pain there rests this ladder</source>
        <translation>負荷のかかる部位：痛みがあればこのラダーは休み</translation>
    </message>
    <message>
        <source>Ranges and times of your own rest on no source. The rules of loads, age and pain hold for them all the same.</source>
        <translation>自分で決めた可動域や時間には出典がありません。負荷・年齢・痛みの規則は同じく適用されます。</translation>
    </message>
    <message>
        <source>Delete this ladder</source>
        <translation>このラダーを削除</translation>
    </message>
    <message>
        <source>Put it into the season</source>
        <translation>シーズンに加える</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
</context>
<context>
    <name>PageFrame</name>
    <message>
        <source>Back</source>
        <translation>戻る</translation>
    </message>
</context>
<context>
    <name>PagesWords</name>
    <message>
        <source>week %1 of %2</source>
        <translation>%2週中%1週目</translation>
    </message>
    <message>
        <source>Sprints first, the lifts after the run.</source>
        <translation>先にスプリント、種目は走った後に。</translation>
    </message>
    <message>
        <source>No lifts today</source>
        <translation>今日は種目なし</translation>
    </message>
    <message>
        <source>Today belongs to the track.</source>
        <translation>今日はトラックの日です。</translation>
    </message>
    <message>
        <source>Rest is part of the plan. The next lifts stand on Ladder.</source>
        <translation>休養も計画のうちです。次の種目は「ラダー」にあります。</translation>
    </message>
    <message>
        <source>Go to Ladder</source>
        <translation>ラダーへ</translation>
    </message>
    <message>
        <source>No season yet</source>
        <translation>まだシーズンがありません</translation>
    </message>
    <message>
        <source>Plan a season on Ladder: it starts from the main competition and counts backwards. From then on, each day&apos;s lifts, loads and sets stand here.</source>
        <translation>「ラダー」でシーズンを組みます：主要競技会から逆算します。それからは毎日の種目、負荷、セットがここに並びます。</translation>
    </message>
    <message>
        <source>Plan a season on Ladder</source>
        <translation>ラダーでシーズンを組む</translation>
    </message>
    <message>
        <source>A season is planned backwards</source>
        <translation>シーズンは逆算で組みます</translation>
    </message>
    <message>
        <source>Say when the main competition is and which lifts you keep for the whole season. As it comes nearer, each lift goes down its ladder to a shorter range.</source>
        <translation>主要競技会の日と、シーズンを通して続ける種目を決めます。近づくにつれ、各種目はラダーを下りて短い可動域へ移ります。</translation>
    </message>
    <message>
        <source>Nobody trains here yet</source>
        <translation>まだ誰もいません</translation>
    </message>
    <message>
        <source>Add an athlete on Squad, then plan a season on Ladder.</source>
        <translation>「チーム」で選手を追加し、「ラダー」でシーズンを組んでください。</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>チームへ</translation>
    </message>
    <message>
        <source>No athlete, no season</source>
        <translation>選手がいないとシーズンもありません</translation>
    </message>
    <message>
        <source>Add an athlete on Squad first.</source>
        <translation>先に「チーム」で選手を追加してください。</translation>
    </message>
</context>
<context>
    <name>PlatesSheet</name>
    <message>
        <source>Plates on the bar</source>
        <translation>バーのプレート</translation>
    </message>
    <message>
        <source>Load: %1</source>
        <translation>負荷：%1</translation>
    </message>
    <message>
        <source>Take the last plates off</source>
        <translation>最後のプレートを外す</translation>
    </message>
    <message>
        <source>A plate of %1 on each side</source>
        <translation>両側に %1 のプレート</translation>
    </message>
    <message>
        <source>Take all off</source>
        <translation>すべて外す</translation>
    </message>
    <message>
        <source>This is on the bar</source>
        <translation>これがバーの重さ</translation>
    </message>
</context>
<context>
    <name>PoseTile</name>
    <message>
        <source>%1: taken</source>
        <translation>%1：済み</translation>
    </message>
    <message>
        <source>%1: next</source>
        <translation>%1：次</translation>
    </message>
    <message>
        <source>%1: open</source>
        <translation>%1：まだ</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>済み</translation>
    </message>
    <message>
        <source>next</source>
        <translation>次</translation>
    </message>
    <message>
        <source>open</source>
        <translation>まだ</translation>
    </message>
</context>
<context>
    <name>RadioTroubleWords</name>
    <message>
        <source>Bluetooth is off. Switch it on: the sensor then connects by itself.</source>
        <translation>Bluetooth がオフです。オンにすると自動で接続します。</translation>
    </message>
    <message>
        <source>No Bluetooth was found on this device. Switch it on in the system&apos;s settings, or plug a Bluetooth adapter in.</source>
        <translation>この端末に Bluetooth が見つかりません。システム設定でオンにするか、アダプターを挿してください。</translation>
    </message>
    <message>
        <source>Fleetrung may not use Bluetooth. Allow it in the system&apos;s settings for Fleetrung; on older phones location must be on, too.</source>
        <translation>Fleetrung は Bluetooth を使えません。システム設定で許可してください。古い端末では位置情報もオンにします。</translation>
    </message>
    <message>
        <source>%1 is not in reach. Switch it on and bring it near: it then connects by itself.</source>
        <translation>%1 が届く範囲にありません。電源を入れて近づけると自動で接続します。</translation>
    </message>
    <message>
        <source>%1 is near but did not let us in. Disconnect it from any other phone, or switch it off and on.</source>
        <translation>%1 は近くにありますが接続できません。他の端末から切り離すか、電源を入れ直してください。</translation>
    </message>
    <message>
        <source>The connection to %1 was lost and is being made again. Keep the phone within a few metres of it.</source>
        <translation>%1 との接続が切れ、つなぎ直しています。端末を数メートル以内に置いてください。</translation>
    </message>
    <message>
        <source>%1 answers, but it is not the kind of sensor it was saved as. Choose another description for it, or teach it anew.</source>
        <translation>%1 は応答しますが、保存した種類のセンサーと違います。別の記述を選ぶか、教え直してください。</translation>
    </message>
    <message>
        <source>%1 asks for pairing, and the pairing with this device does not work. Open the system&apos;s Bluetooth settings, forget (remove) %1 there, and connect again.</source>
        <translation>%1 がペアリングを求めていますが、この端末とのペアリングが働きません。システムの Bluetooth 設定で %1 を削除してから、もう一度接続してください。</translation>
    </message>
    <message>
        <source>%1 is connected but sends nothing; it is being asked again. If this stays, switch it off and on.</source>
        <translation>%1 は接続済みですが何も送りません。もう一度求めています。続くときは電源を入れ直してください。</translation>
    </message>
    <message>
        <source>%1 sends data that its description does not fit. Choose another description for it, or teach it anew.</source>
        <translation>%1 の送るデータが記述に合いません。別の記述を選ぶか、教え直してください。</translation>
    </message>
    <message>
        <source>%1 sends more than this connection may carry, and samples can be lost. Set a lower rate on the sensor if you can.</source>
        <translation>%1 はこの接続で運べる以上に送っており、失われることがあります。できればセンサーの周波数を下げてください。</translation>
    </message>
    <message>
        <source>The sensor</source>
        <translation>センサー</translation>
    </message>
</context>
<context>
    <name>ReportWords</name>
    <message>
        <source>SEASON REPORT</source>
        <translation>シーズン報告</translation>
    </message>
    <message>
        <source>Season report</source>
        <translation>シーズン報告</translation>
    </message>
    <message>
        <source>no medical advice</source>
        <translation>医学的助言ではありません</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>%1 / %2 ページ</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>%1 ページ</translation>
    </message>
    <message>
        <source>born %1</source>
        <translation>%1年生まれ</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>%1まで</translation>
    </message>
    <message>
        <source>weeks of the season</source>
        <translation>シーズンの週</translation>
    </message>
    <message>
        <source>planned training days done</source>
        <translation>計画した練習日の実施</translation>
    </message>
    <message>
        <source>sessions in the log</source>
        <translation>記録された練習</translation>
    </message>
    <message>
        <source>repetitions in the log</source>
        <translation>記録された反復</translation>
    </message>
    <message>
        <source>days lost</source>
        <translation>失った日</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>経過</translation>
    </message>
    <message>
        <source>The season ran %1, from %2 to %3.</source>
        <translation>シーズンは%2から%3まで%1でした。</translation>
    </message>
    <message>
        <source>Week %1 of %2: the season began on %3 and is planned to %4.</source>
        <translation>第%1週（全%2週）：シーズンは%3に始まり、%4まで計画されています。</translation>
    </message>
    <message>
        <source>%1 of %2 planned training days were done.</source>
        <translation>計画した練習日%2日のうち%1日を実施しました。</translation>
    </message>
    <message>
        <source>%1 of 1 planned training day was done.</source>
        <translation>計画した練習日1日のうち%1日を実施しました。</translation>
    </message>
    <message>
        <source>%1 days were lost: %2.</source>
        <translation>%1日を失いました：%2。</translation>
    </message>
    <message>
        <source>1 day was lost: %1.</source>
        <translation>1日を失いました：%1。</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, all measured by a sensor.</source>
        <translation>%1、%2、%3が記録されており、すべてセンサーで測定しました。</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, all typed in.</source>
        <translation>%1、%2、%3が記録されており、すべて手入力です。</translation>
    </message>
    <message>
        <source>%1 with %2 and %3 are in the log, %4 of them measured by a sensor.</source>
        <translation>%1、%2、%3が記録されており、うち%4回はセンサーで測定しました。</translation>
    </message>
    <message>
        <source>%1: from %2 to %3 in %4; on %5 since %6.</source>
        <translation>%1：%2から%3へ、%4。%6から%5。</translation>
    </message>
    <message>
        <source>%1: on %2 since %3.</source>
        <translation>%1：%3から%2。</translation>
    </message>
    <message>
        <source>%1 became shorter on %2.</source>
        <translation>%1が短くなった段：%2。</translation>
    </message>
    <message>
        <source>%1 became longer on %2.</source>
        <translation>%1が長くなった段：%2。</translation>
    </message>
    <message>
        <source>No change of %1 beyond its day-to-day error on %2.</source>
        <translation>%1に日々の誤差を超える変化がない段：%2。</translation>
    </message>
    <message>
        <source>%1: %2; best %3 s on %4 (wind %5 m/s), best of the first day %6 s.</source>
        <translation>%1：%2、最高 %3 秒（%4、風 %5 m/s）、初日の最高 %6 秒。</translation>
    </message>
    <message>
        <source>%1: %2; best %3 s on %4, best of the first day %5 s.</source>
        <translation>%1：%2、最高 %3 秒（%4）、初日の最高 %5 秒。</translation>
    </message>
    <message>
        <source>%1 decisions were taken (%2); %3 followed, %4 changed by the athlete; of those that are no hold, %5 still open.</source>
        <translation>判断は%1回（%2）。従った%3回、選手が変更%4回、維持以外で未回答%5回。</translation>
    </message>
    <message>
        <source>1 decision was taken (%1); %2 followed, %3 changed by the athlete; of those that are no hold, %4 still open.</source>
        <translation>判断は1回（%1）。従った%2回、選手が変更%3回、維持以外で未回答%4回。</translation>
    </message>
    <message>
        <source>Pain of 3 or more out of 10 was noted on %1 (%2).</source>
        <translation>10段階で3以上の痛みが記録された日数：%1（%2）。</translation>
    </message>
    <message>
        <source>Pain of 3 or more out of 10 was noted on %1.</source>
        <translation>10段階で3以上の痛みが記録された日数：%1。</translation>
    </message>
    <message>
        <source>%1 (%2 to %3 ms, typical error %4 ms)</source>
        <translation>%1（%2 → %3 ms、典型誤差 %4 ms）</translation>
    </message>
    <message>
        <source>%1, left</source>
        <translation>%1、左</translation>
    </message>
    <message>
        <source>%1, right</source>
        <translation>%1、右</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1セット</translation>
    </message>
    <message>
        <source>1 set</source>
        <translation>1セット</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1回</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1回</translation>
    </message>
    <message>
        <source>%1 changes of rung</source>
        <translation>段の変更%1回</translation>
    </message>
    <message>
        <source>1 change of rung</source>
        <translation>段の変更1回</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1本</translation>
    </message>
    <message>
        <source>1 run</source>
        <translation>1本</translation>
    </message>
    <message>
        <source>%1 hold</source>
        <translation>維持%1回</translation>
    </message>
    <message>
        <source>%1 step</source>
        <translation>進む%1回</translation>
    </message>
    <message>
        <source>%1 step back</source>
        <translation>戻る%1回</translation>
    </message>
    <message>
        <source>%1 ease</source>
        <translation>軽くする%1回</translation>
    </message>
    <message>
        <source>%1 rest</source>
        <translation>休む%1回</translation>
    </message>
    <message>
        <source>illness %1</source>
        <translation>病気%1日</translation>
    </message>
    <message>
        <source>travel %1</source>
        <translation>移動%1日</translation>
    </message>
    <message>
        <source>exams %1</source>
        <translation>試験%1日</translation>
    </message>
    <message>
        <source>injury %1</source>
        <translation>けが%1日</translation>
    </message>
    <message>
        <source>no reason given %1</source>
        <translation>理由なし%1日</translation>
    </message>
    <message>
        <source>Competitions</source>
        <translation>競技会</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>日</translation>
    </message>
    <message>
        <source>Competition</source>
        <translation>競技会</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>格</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>結果</translation>
    </message>
    <message>
        <source>main</source>
        <translation>主要</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>これから</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>注意</translation>
    </message>
    <message>
        <source>This report is no medical advice.</source>
        <translation>この報告は医学的助言ではありません。</translation>
    </message>
    <message>
        <source>Work with a licensed coach or clinician; local rules and facility codes come first.</source>
        <translation>有資格のコーチや医療者とともに行い、地域や施設の規則を優先してください。</translation>
    </message>
    <message>
        <source>Pain, injury, pregnancy: clear it with a clinician before training on.</source>
        <translation>痛み、けが、妊娠：続ける前に医療者に確認してください。</translation>
    </message>
    <message>
        <source>Under 18: with a guardian&apos;s consent and clearance.</source>
        <translation>18歳未満：保護者の同意と許可が必要です。</translation>
    </message>
    <message>
        <source>Heavy lifts over a short range: safety bars set and a spotter there.</source>
        <translation>短い可動域の高重量：セーフティーバーを設定し、補助者を付けてください。</translation>
    </message>
    <message>
        <source>Landings are limited: keep to the contacts planned for a session.</source>
        <translation>着地は制限されています。計画した接地数を守ってください。</translation>
    </message>
    <message>
        <source>Estimates of the one-repetition maximum are estimates.</source>
        <translation>最大挙上重量の推定値は推定にすぎません。</translation>
    </message>
    <message>
        <source>Target bands are starting values, for show: where a rung should lead, not a mark to be forced.</source>
        <translation>目標帯は参考用の初期値です。段が向かう先であり、無理に達成する値ではありません。</translation>
    </message>
    <message>
        <source>That strength over shorter ranges carries over better to sprinting is the working premise, with evidence on both sides.</source>
        <translation>短い可動域の筋力がスプリントに転移しやすいというのは作業仮説で、賛否両方の根拠があります。</translation>
    </message>
    <message>
        <source>Nothing here shows cause.</source>
        <translation>ここに因果関係を示すものはありません。</translation>
    </message>
    <message>
        <source>%1 ladder</source>
        <translation>%1ラダー</translation>
    </message>
    <message>
        <source>Rung</source>
        <translation>段</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>計画</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>実際</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>セット</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>負荷</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>自体重</translation>
    </message>
    <message>
        <source>%1 against the target band</source>
        <translation>%1と目標帯</translation>
    </message>
    <message>
        <source>Within each rung</source>
        <translation>各段の中で</translation>
    </message>
    <message>
        <source>Entry: mean of the first three sessions; latest: mean of the last three; a change is called one from 1.35 typical errors on.</source>
        <translation>開始：最初の3回の平均、最新：最後の3回の平均。典型誤差の1.35倍から変化とみなします。</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>練習</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>開始</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>最新</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>変化</translation>
    </message>
    <message>
        <source>Typical error</source>
        <translation>典型誤差</translation>
    </message>
    <message>
        <source>Target band</source>
        <translation>目標帯</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>判定</translation>
    </message>
    <message>
        <source>quicker</source>
        <translation>速くなった</translation>
    </message>
    <message>
        <source>slower</source>
        <translation>遅くなった</translation>
    </message>
    <message>
        <source>no clear change</source>
        <translation>明確な変化なし</translation>
    </message>
    <message>
        <source>%1: load and velocity</source>
        <translation>%1：負荷と速度</translation>
    </message>
    <message>
        <source>No line: %1.</source>
        <translation>直線なし：%1。</translation>
    </message>
    <message>
        <source>The fastest repetition at each load of %1 sessions on this rung, %2 points, a robust line.</source>
        <translation>この段の練習%1回で各負荷の最速の反復、%2点、頑健な直線。</translation>
    </message>
    <message>
        <source>The fastest repetition at each load of 1 session on this rung, %1 points, a robust line.</source>
        <translation>この段の練習1回で各負荷の最速の反復、%1点、頑健な直線。</translation>
    </message>
    <message>
        <source>No velocity at 1RM is published for this lift: it points to no 1RM.</source>
        <translation>この種目には1RM時の速度の公表値がないため、1RMは示しません。</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (95 %: %2 to %3), where the line meets %4 m/s (%5).</source>
        <translation>推定1RM %1（95 %：%2〜%3）、直線が %4 m/s になる点（%5）。</translation>
    </message>
    <message>
        <source>Estimated 1RM %1, where the line meets %2 m/s (%3).</source>
        <translation>推定1RM %1、直線が %2 m/s になる点（%3）。</translation>
    </message>
    <message>
        <source>An estimate is an estimate.</source>
        <translation>推定は推定です。</translation>
    </message>
    <message>
        <source>Decisions and their reasons</source>
        <translation>判断とその理由</translation>
    </message>
    <message>
        <source>Holds and rests in a row stand in one line, with the reason of the last; of a hold only what was not met is shown.</source>
        <translation>連続する維持と休みは最後の理由とともに1行にまとめ、維持では満たさなかった項目だけを示します。</translation>
    </message>
    <message>
        <source>Every decision with all its numbers stands in the tables.</source>
        <translation>すべての判断と数値は表にあります。</translation>
    </message>
    <message>
        <source>Ladder</source>
        <translation>ラダー</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>判断</translation>
    </message>
    <message>
        <source>Reason and evidence</source>
        <translation>理由と根拠</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>回答</translation>
    </message>
    <message>
        <source>Evidence: %1.</source>
        <translation>根拠：%1。</translation>
    </message>
    <message>
        <source>%1: met</source>
        <translation>%1：達成</translation>
    </message>
    <message>
        <source>%1: not met</source>
        <translation>%1：未達成</translation>
    </message>
    <message>
        <source>%1 followed, %2 open</source>
        <translation>従った%1、未回答%2</translation>
    </message>
    <message>
        <source>followed</source>
        <translation>従った</translation>
    </message>
    <message>
        <source>open</source>
        <translation>まだ</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>変更</translation>
    </message>
    <message>
        <source>%1 (%2 times)</source>
        <translation>%1（%2回）</translation>
    </message>
    <message>
        <source>Hold at %1</source>
        <translation>維持：%1</translation>
    </message>
    <message>
        <source>Ease at %1</source>
        <translation>軽くする：%1</translation>
    </message>
    <message>
        <source>Rest at %1</source>
        <translation>休む：%1</translation>
    </message>
    <message>
        <source>Step, %1 to %2</source>
        <translation>進む、%1から%2へ</translation>
    </message>
    <message>
        <source>Step back, %1 to %2</source>
        <translation>戻る、%1から%2へ</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>維持</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>軽くする</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>休む</translation>
    </message>
    <message>
        <source>Sprint times</source>
        <translation>スプリントタイム</translation>
    </message>
    <message>
        <source>Only times of the same test are comparable; wind, surface and shoes stand beside each.</source>
        <translation>比較できるのは同じテストのタイムだけです。風・路面・シューズを併記します。</translation>
    </message>
    <message>
        <source>When</source>
        <translation>いつ</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>最高</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>風</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>走路</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>シューズ</translation>
    </message>
    <message>
        <source>Timing</source>
        <translation>計時</translation>
    </message>
    <message>
        <source>Run-in</source>
        <translation>助走</translation>
    </message>
    <message>
        <source>Other times (wind, m/s)</source>
        <translation>他のタイム（風、m/s）</translation>
    </message>
    <message>
        <source>%1, race</source>
        <translation>%1、試合</translation>
    </message>
    <message>
        <source>flying %1 m</source>
        <translation>加速走 %1 m</translation>
    </message>
    <message>
        <source>%1: speed by the splits</source>
        <translation>%1：通過タイムによる速度</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>本数</translation>
    </message>
    <message>
        <source>Top speed, m/s</source>
        <translation>最高速度、m/s</translation>
    </message>
    <message>
        <source>Fit within, ms</source>
        <translation>当てはめ、ms</translation>
    </message>
    <message>
        <source>Power, W/kg</source>
        <translation>パワー、W/kg</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>除外</translation>
    </message>
    <message>
        <source>Speed over the way on %1, and how far each split lies from the curve</source>
        <translation>%1の距離と速度、各通過タイムの曲線からのずれ</translation>
    </message>
    <message>
        <source>%1: no curve, %2</source>
        <translation>%1：曲線なし、%2</translation>
    </message>
    <message>
        <source>Without force and power: %1</source>
        <translation>力とパワーなし：%1</translation>
    </message>
    <message>
        <source>The run with the greatest top speed stands for its time.</source>
        <translation>最高速度が最も大きい1本でその日を代表します。</translation>
    </message>
    <message>
        <source>± is one standard error.</source>
        <translation>±は標準誤差1つ分です。</translation>
    </message>
    <message>
        <source>F0 and power: greatest horizontal force and power for each kilogram, with the drag of the air.</source>
        <translation>F0とパワー：空気抵抗を含む、体重1kg当たりの最大の水平方向の力とパワー。</translation>
    </message>
    <message>
        <source>A flying start gives none of these.</source>
        <translation>加速走からはこれらは得られません。</translation>
    </message>
    <message>
        <source>Track by week</source>
        <translation>週ごとのトラック</translation>
    </message>
    <message>
        <source>Fast metres: metres at 90 and 95 % of the best speed of the 12 months before.</source>
        <translation>高速の距離：過去12か月の最高速度の90 %と95 %以上の距離。</translation>
    </message>
    <message>
        <source>A week above 1.3 times the mean of the four before it is said.</source>
        <translation>前の4週平均の1.3倍を超えた週を示します。</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>週</translation>
    </message>
    <message>
        <source>week %1, %2</source>
        <translation>第%1週、%2</translation>
    </message>
    <message>
        <source>week %1</source>
        <translation>%1週</translation>
    </message>
    <message>
        <source>Sprint days</source>
        <translation>スプリントの日</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>距離</translation>
    </message>
    <message>
        <source>At 90 %</source>
        <translation>90 %以上</translation>
    </message>
    <message>
        <source>At 95 %</source>
        <translation>95 %以上</translation>
    </message>
    <message>
        <source>Resisted</source>
        <translation>牽引</translation>
    </message>
    <message>
        <source>Hill</source>
        <translation>坂</translation>
    </message>
    <message>
        <source>Contacts</source>
        <translation>接地数</translation>
    </message>
    <message>
        <source>More than usual</source>
        <translation>普段より多い</translation>
    </message>
    <message>
        <source>* Part of it is estimated: runs without splits, or work counted by its effort.</source>
        <translation>* 一部は推定です：通過タイムのない走り、または努力度で数えた練習。</translation>
    </message>
    <message>
        <source>Work on the track</source>
        <translation>トラックの練習</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>種類</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>努力度</translation>
    </message>
    <message>
        <source>sled %1</source>
        <translation>そり %1</translation>
    </message>
    <message>
        <source>slope %1 %</source>
        <translation>傾斜 %1 %</translation>
    </message>
    <message>
        <source>best %1 s</source>
        <translation>最高 %1 秒</translation>
    </message>
    <message>
        <source>best %1 s %2</source>
        <translation>最高 %1 秒 %2</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>風 %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1 m</source>
        <translation>助走 %1 m</translation>
    </message>
    <message>
        <source>sprints</source>
        <translation>スプリント</translation>
    </message>
    <message>
        <source>flying</source>
        <translation>加速走</translation>
    </message>
    <message>
        <source>resisted</source>
        <translation>負荷走</translation>
    </message>
    <message>
        <source>hill</source>
        <translation>坂</translation>
    </message>
    <message>
        <source>easy</source>
        <translation>軽め</translation>
    </message>
    <message>
        <source>track</source>
        <translation>トラック</translation>
    </message>
    <message>
        <source>indoor</source>
        <translation>室内</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>芝</translation>
    </message>
    <message>
        <source>spikes</source>
        <translation>スパイク</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>フラット</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>手動</translation>
    </message>
    <message>
        <source>gates</source>
        <translation>光電管</translation>
    </message>
    <message>
        <source>video</source>
        <translation>動画</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>電気計時</translation>
    </message>
    <message>
        <source>Jumps</source>
        <translation>ジャンプ</translation>
    </message>
    <message>
        <source>Jump</source>
        <translation>跳躍</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>台</translation>
    </message>
    <message>
        <source>Contact, median</source>
        <translation>接地、中央値</translation>
    </message>
    <message>
        <source>Best height or distance</source>
        <translation>最高の高さまたは距離</translation>
    </message>
    <message>
        <source>Best reactive strength</source>
        <translation>最高の反応筋力</translation>
    </message>
    <message>
        <source>Reactive strength: jump height over contact time.</source>
        <translation>反応筋力：跳躍高を接地時間で割った値。</translation>
    </message>
    <message>
        <source>drop jump</source>
        <translation>ドロップジャンプ</translation>
    </message>
    <message>
        <source>standing long jump</source>
        <translation>立ち幅跳び</translation>
    </message>
    <message>
        <source>standing triple jump</source>
        <translation>立ち三段跳び</translation>
    </message>
    <message>
        <source>counter-movement jump</source>
        <translation>反動ジャンプ</translation>
    </message>
    <message>
        <source>%1 bounds</source>
        <translation>バウンディング%1回</translation>
    </message>
    <message>
        <source>Did it work?</source>
        <translation>効果はあったか？</translation>
    </message>
    <message>
        <source>Not judged: %1</source>
        <translation>判定なし：%1</translation>
    </message>
    <message>
        <source>The bar within each rung beside the sprint against the season&apos;s trend, week by week.</source>
        <translation>各段でのバーと、シーズンの傾向に対するスプリントを週ごとに並べます。</translation>
    </message>
    <message>
        <source>Times as they are would always go together: ranges grow shorter and summer comes.</source>
        <translation>そのままのタイムは必ず連動します。可動域は短くなり、夏が来るからです。</translation>
    </message>
    <message>
        <source>Sprint</source>
        <translation>スプリント</translation>
    </message>
    <message>
        <source>Weeks with both</source>
        <translation>両方ある週</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>必要</translation>
    </message>
    <message>
        <source>Rungs</source>
        <translation>段</translation>
    </message>
    <message>
        <source>Rank correlation</source>
        <translation>順位相関</translation>
    </message>
    <message>
        <source>95 %, for show</source>
        <translation>95 %（参考）</translation>
    </message>
    <message>
        <source>Chance reaches</source>
        <translation>偶然の範囲</translation>
    </message>
    <message>
        <source>the same week</source>
        <translation>同じ週</translation>
    </message>
    <message>
        <source>This is no proof of cause.</source>
        <translation>これは原因の証明ではありません。</translation>
    </message>
    <message>
        <source>Planned against done</source>
        <translation>計画と実施</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>期</translation>
    </message>
    <message>
        <source>From – to</source>
        <translation>期間</translation>
    </message>
    <message>
        <source>Days planned</source>
        <translation>計画日数</translation>
    </message>
    <message>
        <source>Days done</source>
        <translation>実施日数</translation>
    </message>
    <message>
        <source>Sets planned</source>
        <translation>計画セット</translation>
    </message>
    <message>
        <source>Sets done</source>
        <translation>実施セット</translation>
    </message>
    <message>
        <source>Days lost</source>
        <translation>失った日</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>理由</translation>
    </message>
    <message>
        <source>illness</source>
        <translation>病気</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>移動</translation>
    </message>
    <message>
        <source>exams</source>
        <translation>試験</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>けが</translation>
    </message>
    <message>
        <source>Pain noted</source>
        <translation>記録された痛み</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>痛み</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>部位</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2 の %1</translation>
    </message>
    <message>
        <source>%1 m from blocks</source>
        <translation>ブロックから %1 m</translation>
    </message>
    <message>
        <source>%1 m standing</source>
        <translation>立位から %1 m</translation>
    </message>
    <message>
        <source>%1 m falling</source>
        <translation>倒れ込みから %1 m</translation>
    </message>
    <message>
        <source>%1 m rolling</source>
        <translation>歩き出しから %1 m</translation>
    </message>
    <message>
        <source>block</source>
        <translation>ブロック</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>立位</translation>
    </message>
    <message>
        <source>falling</source>
        <translation>倒れ込み</translation>
    </message>
    <message>
        <source>rolling</source>
        <translation>歩き出し</translation>
    </message>
    <message>
        <source>race</source>
        <translation>試合</translation>
    </message>
    <message>
        <source>%1 % more fast metres than the mean of the four weeks before</source>
        <translation>高速の距離が前の4週平均より%1 %多い</translation>
    </message>
    <message>
        <source>%1 % more metres than the mean of the four weeks before</source>
        <translation>距離が前の4週平均より%1 %多い</translation>
    </message>
    <message>
        <source>fast metres after four weeks without</source>
        <translation>4週間なかった後の高速の距離</translation>
    </message>
    <message>
        <source>metres after four weeks without</source>
        <translation>4週間なかった後の距離</translation>
    </message>
    <message>
        <source>lift at two loads at least 10 % apart; a third and a fourth steady the line</source>
        <translation>10 %以上離れた2つの負荷で挙げてください。3つ目、4つ目があると直線が安定します</translation>
    </message>
    <message>
        <source>Hold, %1 to %2</source>
        <translation>維持、%1から%2へ</translation>
    </message>
</context>
<context>
    <name>RowButton</name>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
</context>
<context>
    <name>RunFilter</name>
    <message>
        <source>Personal bests</source>
        <translation>自己ベスト</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>最高</translation>
    </message>
</context>
<context>
    <name>RunFitSheet</name>
    <message>
        <source>Touch a split to read it.</source>
        <translation>通過タイムをタップすると読めます。</translation>
    </message>
    <message>
        <source>Splits that were left out</source>
        <translation>除外した通過タイム</translation>
    </message>
    <message>
        <source>Use them anyway</source>
        <translation>それでも使う</translation>
    </message>
    <message>
        <source>Splits against the fit</source>
        <translation>通過タイムと曲線</translation>
    </message>
    <message>
        <source>Force and power</source>
        <translation>力とパワー</translation>
    </message>
</context>
<context>
    <name>RunFormWords</name>
    <message>
        <source>That day has not come yet.</source>
        <translation>その日はまだ来ていません。</translation>
    </message>
    <message>
        <source>The split at %1 says %2. Take one of them out.</source>
        <translation>%1 の通過タイムは %2 です。どちらかを外してください。</translation>
    </message>
    <message>
        <source>It must be later than the last split.</source>
        <translation>最後の通過タイムより後でなければなりません。</translation>
    </message>
    <message>
        <source>A split lies at %1.</source>
        <translation>%1 に通過タイムがあります。</translation>
    </message>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>それほど速く走った人はいません。距離とタイムを確かめてください。</translation>
    </message>
</context>
<context>
    <name>RunRow</name>
    <message>
        <source>%1, %2. %3</source>
        <translation>%1、%2。%3</translation>
    </message>
    <message>
        <source>Delete %1, %2</source>
        <translation>%1、%2 を削除</translation>
    </message>
</context>
<context>
    <name>RunRowsWords</name>
    <message>
        <source>competition</source>
        <translation>競技会</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>テスト日</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>風 %1</translation>
    </message>
    <message>
        <source>wind-aided</source>
        <translation>追い風参考</translation>
    </message>
    <message>
        <source>best</source>
        <translation>最高</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>助走 %1</translation>
    </message>
    <message>
        <source>%1 splits</source>
        <translation>通過 %1</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>手動</translation>
    </message>
    <message>
        <source>run once</source>
        <translation>1本</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1本</translation>
    </message>
    <message>
        <source>wind-aided %1 (%2)</source>
        <translation>追い風参考 %1（%2）</translation>
    </message>
</context>
<context>
    <name>RunSheet</name>
    <message>
        <source>Add a run</source>
        <translation>走りを追加</translation>
    </message>
    <message>
        <source>Zone, m</source>
        <translation>区間、m</translation>
    </message>
    <message>
        <source>Distance, m</source>
        <translation>距離、m</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>スタート</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>ブロック</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>スタンディング</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>倒れ込み</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>ローリング</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>加速走</translation>
    </message>
    <message>
        <source>Run-in before the zone, m</source>
        <translation>区間前の助走、m</translation>
    </message>
    <message>
        <source>Splits</source>
        <translation>通過タイム</translation>
    </message>
    <message>
        <source>Time, s (if no split stands at the end)</source>
        <translation>タイム、s（最後に通過タイムがない場合）</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>タイム、s</translation>
    </message>
    <message>
        <source>Wind, m/s, tail wind positive (optional)</source>
        <translation>風、m/s、追い風が正（任意）</translation>
    </message>
    <message>
        <source>+0,8 or -1.2</source>
        <translation>+0,8 または -1.2</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>計時</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>手動</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>光電管</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>動画</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>電気計時</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>走路</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>トラック</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>室内</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>芝</translation>
    </message>
    <message>
        <source>Is it one of these?</source>
        <translation>当てはまりますか？</translation>
    </message>
    <message>
        <source>Trial of a test day</source>
        <translation>テスト日の試技</translation>
    </message>
    <message>
        <source>Competition</source>
        <translation>競技会</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>少なく</translation>
    </message>
    <message>
        <source>More</source>
        <translation>もっと</translation>
    </message>
    <message>
        <source>Shoes, reaction, air, steps from video, note</source>
        <translation>シューズ、反応、気象、動画の歩幅、メモ</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>シューズ</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>スパイク</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>フラット</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>指定なし</translation>
    </message>
    <message>
        <source>Reaction from the gun, s, where it was timed</source>
        <translation>号砲からの反応時間、s（計った場合）</translation>
    </message>
    <message>
        <source>Start line to the beam that starts the clock, m; the splits count from the beam</source>
        <translation>スタート線から時計を始める光電管まで、m。通過は光電管から数える</translation>
    </message>
    <message>
        <source>Air temperature, °C</source>
        <translation>気温、°C</translation>
    </message>
    <message>
        <source>Height above the sea, m</source>
        <translation>標高、m</translation>
    </message>
    <message>
        <source>Ground contact near top speed, ms: from video at 240 pictures a second, ± 4 ms</source>
        <translation>最高速度付近の接地、ms：毎秒240コマの動画、± 4 ms</translation>
    </message>
    <message>
        <source>Step length near top speed, %1, from video</source>
        <translation>最高速度付近のストライド、%1、動画から</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Save the run</source>
        <translation>走りを保存</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>日付（例 %1）</translation>
    </message>
</context>
<context>
    <name>RungFormWords</name>
    <message>
        <source>This is no height of a box.</source>
        <translation>台の高さではありません。</translation>
    </message>
    <message>
        <source>leads to %1</source>
        <translation>目標 %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1～%2</translation>
    </message>
    <message>
        <source>The longer range stands here.</source>
        <translation>ここには長いほうの可動域を入れます。</translation>
    </message>
    <message>
        <source>The later time stands here.</source>
        <translation>ここには遅いほうの時間を入れます。</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>終わりが始まりより前です。</translation>
    </message>
</context>
<context>
    <name>RungSheet</name>
    <message>
        <source>A new rung</source>
        <translation>新しい段</translation>
    </message>
    <message>
        <source>Change the rung</source>
        <translation>段を変更</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>Range from, %1</source>
        <translation>可動域 最小（%1）</translation>
    </message>
    <message>
        <source>to, %1</source>
        <translation>最大（%1）</translation>
    </message>
    <message>
        <source>Should lead to, from ms</source>
        <translation>目標 最小（ms）</translation>
    </message>
    <message>
        <source>to, ms</source>
        <translation>最大（ms）</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>セット</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>Rest, seconds</source>
        <translation>休息（秒）</translation>
    </message>
    <message>
        <source>Box, %1 (optional)</source>
        <translation>台、%1（任意）</translation>
    </message>
    <message>
        <source>Begins, at the earliest, in</source>
        <translation>開始は早くて</translation>
    </message>
    <message>
        <source>Is left, at the latest, at the end of</source>
        <translation>終了は遅くとも次の期の終わり</translation>
    </message>
    <message>
        <source>First load here, % of the last load on the rung before</source>
        <translation>最初の負荷（前の段の最後の負荷に対する%）</translation>
    </message>
    <message>
        <source>Probe load, % of what the rung allows (0 for body mass)</source>
        <translation>確認セットの負荷（段の許容量に対する%、自重は0）</translation>
    </message>
    <message>
        <source>How the bar moves: what the sensor looks for</source>
        <translation>バーの動き：センサーが探す動作</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>必要な器具</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>バー</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>ラック</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>ピン</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>ブロック</translation>
    </message>
    <message>
        <source>Take this rung out</source>
        <translation>この段を外す</translation>
    </message>
    <message>
        <source>Some of it cannot be taken yet: look above.</source>
        <translation>まだ使えない項目があります。上を確認してください。</translation>
    </message>
    <message>
        <source>Keep the rung</source>
        <translation>段を保存</translation>
    </message>
</context>
<context>
    <name>SeasonChangesWords</name>
    <message>
        <source>1 day</source>
        <translation>1日</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1日</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1：%2～%3</translation>
    </message>
    <message>
        <source>, %1 longer</source>
        <translation>、%1 長い</translation>
    </message>
    <message>
        <source>, %1 shorter</source>
        <translation>、%1 短い</translation>
    </message>
    <message>
        <source>, new</source>
        <translation>、新規</translation>
    </message>
    <message>
        <source>No more %1</source>
        <translation>%1 はなくなります</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>%1: %2 instead of %3</source>
        <translation>%1：%3 の代わりに %2</translation>
    </message>
    <message>
        <source>%1: %2, new</source>
        <translation>%1：%2、新規</translation>
    </message>
    <message>
        <source>%1, %2: no longer planned</source>
        <translation>%1、%2：予定なし</translation>
    </message>
</context>
<context>
    <name>SeasonEditSheet</name>
    <message>
        <source>Change the season</source>
        <translation>シーズンを変更</translation>
    </message>
    <message>
        <source>Competitions</source>
        <translation>競技会</translation>
    </message>
    <message>
        <source>Add a competition</source>
        <translation>競技会を追加</translation>
    </message>
    <message>
        <source>Travel, exams, illness, injury</source>
        <translation>移動、試験、病気、けが</translation>
    </message>
    <message>
        <source>Add days away</source>
        <translation>休む日を追加</translation>
    </message>
    <message>
        <source>The week</source>
        <translation>1週間</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>種目の日</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>スプリントの日</translation>
    </message>
    <message>
        <source>Length of a session with lifts, minutes</source>
        <translation>種目の練習時間、分</translation>
    </message>
    <message>
        <source>Keep this length</source>
        <translation>この長さにする</translation>
    </message>
    <message>
        <source>The weight room</source>
        <translation>トレーニング室</translation>
    </message>
    <message>
        <source>What it has</source>
        <translation>あるもの</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>バー</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>ラック</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>ピン</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>ブロック</translation>
    </message>
    <message>
        <source>Boxes</source>
        <translation>台</translation>
    </message>
    <message>
        <source>A height that you do not have is never planned. It stays as you type it.</source>
        <translation>持っていない高さは計画に入りません。入力したとおりに残ります。</translation>
    </message>
    <message>
        <source>Remove the box of %1</source>
        <translation>%1 の台を外す</translation>
    </message>
    <message>
        <source>Height of another box, %1</source>
        <translation>別の台の高さ、%1</translation>
    </message>
    <message>
        <source>Add this box</source>
        <translation>この台を追加</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>種目</translation>
    </message>
    <message>
        <source>Ladders and other lifts</source>
        <translation>ラダーとその他の種目</translation>
    </message>
</context>
<context>
    <name>SeasonFormWords</name>
    <message>
        <source>&quot;%1&quot; is no height of a box.</source>
        <translation>「%1」は台の高さではありません。</translation>
    </message>
    <message>
        <source>Choose at least one day.</source>
        <translation>1日以上選んでください。</translation>
    </message>
    <message>
        <source>Choose at least one lift.</source>
        <translation>1種目以上選んでください。</translation>
    </message>
    <message>
        <source>The competition comes after the season&apos;s first day.</source>
        <translation>試合はシーズン初日より後でなければなりません。</translation>
    </message>
</context>
<context>
    <name>SeasonLiftsSheet</name>
    <message>
        <source>Lifts of the season</source>
        <translation>シーズンの種目</translation>
    </message>
    <message>
        <source>A ladder of your own</source>
        <translation>自分のラダー</translation>
    </message>
    <message>
        <source>Beside the ladders</source>
        <translation>ラダー以外</translation>
    </message>
    <message>
        <source>Hip thrusts, hamstring work, upper body, throws: logged and counted as load, never stepped.</source>
        <translation>ヒップスラスト、ハムストリング、上半身、投げ：記録して負荷に数えますが、段はありません。</translation>
    </message>
    <message>
        <source>Add a lift beside the ladders</source>
        <translation>ラダー以外の種目を追加</translation>
    </message>
    <message>
        <source>Begin with a copy of</source>
        <translation>コピー元を選ぶ</translation>
    </message>
    <message>
        <source>Everything in it can be changed: names, ranges, boxes, times, phases.</source>
        <translation>名前、可動域、台、時間、期、すべて変更できます。</translation>
    </message>
</context>
<context>
    <name>SeasonSheet</name>
    <message>
        <source>Plan a season</source>
        <translation>シーズンを組む</translation>
    </message>
    <message>
        <source>Main competition</source>
        <translation>主要競技会</translation>
    </message>
    <message>
        <source>club championship</source>
        <translation>クラブ選手権</translation>
    </message>
    <message>
        <source>First day of the season</source>
        <translation>シーズンの初日</translation>
    </message>
    <message>
        <source>Days with lifts</source>
        <translation>種目の日</translation>
    </message>
    <message>
        <source>Days with sprints</source>
        <translation>スプリントの日</translation>
    </message>
    <message>
        <source>Lifts you keep for the whole season, a few</source>
        <translation>シーズンを通して続ける種目（少なく）</translation>
    </message>
    <message>
        <source>What the weight room has</source>
        <translation>トレーニング室にあるもの</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>バー</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>ラック</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>ピン</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>ブロック</translation>
    </message>
    <message>
        <source>Heights of boxes, %1, with spaces between</source>
        <translation>台の高さ、%1、空白区切り</translation>
    </message>
    <message>
        <source>20 30 45</source>
        <translation>20 30 45</translation>
    </message>
    <message>
        <source>Lay out the season</source>
        <translation>シーズンを組む</translation>
    </message>
    <message>
        <source>Day of the main competition</source>
        <translation>主要な試合の日</translation>
    </message>
</context>
<context>
    <name>SecondarySheet</name>
    <message>
        <source>A lift beside the ladders</source>
        <translation>ラダー以外の種目</translation>
    </message>
    <message>
        <source>Change the lift</source>
        <translation>種目を変更</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>hip thrust</source>
        <translation>ヒップスラスト</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>曜日</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>セット</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>What it loads: pain there rests it</source>
        <translation>負荷のかかる部位：痛みがあれば休み</translation>
    </message>
    <message>
        <source>Moves like</source>
        <translation>動きが似ている種目</translation>
    </message>
    <message>
        <source>Take it out of the plan</source>
        <translation>計画から外す</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
</context>
<context>
    <name>Sensor</name>
    <message>
        <source>Bar sensor</source>
        <translation>バーセンサー</translation>
    </message>
    <message>
        <source>Started with --no-radio: no sensor is looked for.</source>
        <translation>--no-radio で起動：センサーは探しません。</translation>
    </message>
</context>
<context>
    <name>SensorPill</name>
    <message>
        <source>%1. %2 Show the sensors</source>
        <translation>%1。%2 センサーを表示</translation>
    </message>
</context>
<context>
    <name>SensorSheet</name>
    <message>
        <source>Try now</source>
        <translation>今試す</translation>
    </message>
    <message>
        <source>Where it is worn</source>
        <translation>着ける場所</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>名前</translation>
    </message>
    <message>
        <source>Save the name</source>
        <translation>名前を保存</translation>
    </message>
    <message>
        <source>Measure its six sides</source>
        <translation>6つの面を測る</translation>
    </message>
    <message>
        <source>As soon as it streams.</source>
        <translation>受信し次第。</translation>
    </message>
    <message>
        <source>How it is read</source>
        <translation>読み方</translation>
    </message>
    <message>
        <source>Teach it anew</source>
        <translation>教え直す</translation>
    </message>
    <message>
        <source>Three minutes, where its numbers look wrong.</source>
        <translation>数値がおかしいとき、3分で。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Forget this sensor</source>
        <translation>このセンサーを忘れる</translation>
    </message>
</context>
<context>
    <name>SensorWords</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>On the bar</source>
        <translation>バー</translation>
    </message>
    <message>
        <source>On the shoe</source>
        <translation>シューズ</translation>
    </message>
    <message>
        <source>At the waist</source>
        <translation>腰</translation>
    </message>
    <message>
        <source>Bar sensor</source>
        <translation>バーセンサー</translation>
    </message>
    <message>
        <source>Shoe sensor</source>
        <translation>シューズセンサー</translation>
    </message>
    <message>
        <source>Waist sensor</source>
        <translation>腰センサー</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>バー</translation>
    </message>
    <message>
        <source>Shoe</source>
        <translation>シューズ</translation>
    </message>
    <message>
        <source>Waist</source>
        <translation>腰</translation>
    </message>
    <message>
        <source>Not looked for</source>
        <translation>探していない</translation>
    </message>
    <message>
        <source>Looking for it</source>
        <translation>探索中</translation>
    </message>
    <message>
        <source>Connecting</source>
        <translation>接続中</translation>
    </message>
    <message>
        <source>Streaming</source>
        <translation>受信中</translation>
    </message>
    <message>
        <source>Lost, looking for it</source>
        <translation>切断、探索中</translation>
    </message>
    <message>
        <source>Far away</source>
        <translation>遠い</translation>
    </message>
    <message>
        <source>Across the room</source>
        <translation>部屋の向こう</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>近い</translation>
    </message>
    <message>
        <source>Very close</source>
        <translation>とても近い</translation>
    </message>
    <message>
        <source>Signal not told</source>
        <translation>信号不明</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>たった今</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>%1分前</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>%1時間前</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>周波数</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>%1 以上</translation>
    </message>
    <message>
        <source>Lost on the way</source>
        <translation>途中で失われた量</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>%1 以下</translation>
    </message>
    <message>
        <source>Lateness</source>
        <translation>遅れ</translation>
    </message>
    <message>
        <source>Longest pause</source>
        <translation>最長の途切れ</translation>
    </message>
    <message>
        <source>Battery</source>
        <translation>電池</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>不明</translation>
    </message>
    <message>
        <source>Zeroed</source>
        <translation>ゼロ合わせ</translation>
    </message>
    <message>
        <source>within 10 min</source>
        <translation>10分以内</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>まだ</translation>
    </message>
    <message>
        <source>lay it still</source>
        <translation>静かに置く</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>回転</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>未測定</translation>
    </message>
    <message>
        <source>wider ± values</source>
        <translation>± の幅が広い</translation>
    </message>
    <message>
        <source>none</source>
        <translation>なし</translation>
    </message>
    <message>
        <source>Unreadable</source>
        <translation>読めない</translation>
    </message>
    <message>
        <source>Times lost</source>
        <translation>切れた回数</translation>
    </message>
    <message>
        <source>since it was found</source>
        <translation>見つけてから</translation>
    </message>
    <message>
        <source>battery %1 %</source>
        <translation>電池 %1 %</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 失われた</translation>
    </message>
</context>
<context>
    <name>SensorsCard</name>
    <message>
        <source>Sensors</source>
        <translation>センサー</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>センサーを追加</translation>
    </message>
    <message>
        <source>Show the sensors</source>
        <translation>センサーを表示</translation>
    </message>
</context>
<context>
    <name>SensorsSheet</name>
    <message>
        <source>Sensors</source>
        <translation>センサー</translation>
    </message>
    <message>
        <source>No sensor yet</source>
        <translation>センサーがまだありません</translation>
    </message>
    <message>
        <source>Any motion sensor that speaks Bluetooth Low Energy will do. Add it once; from then on it is found by itself.</source>
        <translation>Bluetooth Low Energy の動作センサーなら何でも使えます。一度追加すれば、次からは自動で見つかります。</translation>
    </message>
    <message>
        <source>Add a sensor</source>
        <translation>センサーを追加</translation>
    </message>
</context>
<context>
    <name>SessionView</name>
    <message>
        <source>How are you today?</source>
        <translation>今日の調子は？</translation>
    </message>
    <message>
        <source>Sleep, soreness, pain: the day is decided with it.</source>
        <translation>睡眠、筋肉痛、痛み：これで今日を決めます。</translation>
    </message>
    <message>
        <source>%1, %2, %3, %4, %5</source>
        <translation>%1、%2、%3、%4、%5</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>理由は？</translation>
    </message>
    <message>
        <source>Why %1 today?</source>
        <translation>今日 %1 なのはなぜ？</translation>
    </message>
    <message>
        <source>Other lifts</source>
        <translation>その他の種目</translation>
    </message>
    <message>
        <source>Several athletes on this sensor</source>
        <translation>複数の選手で1つのセンサー</translation>
    </message>
</context>
<context>
    <name>SetActions</name>
    <message>
        <source>Undo</source>
        <translation>戻す</translation>
    </message>
    <message>
        <source>Undo the last repetition</source>
        <translation>最後の反復を戻す</translation>
    </message>
    <message>
        <source>End set</source>
        <translation>セット終了</translation>
    </message>
</context>
<context>
    <name>SetView</name>
    <message>
        <source>Last set</source>
        <translation>前のセット</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>本番</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>確認</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>ウォームアップ</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>維持</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>velocity loss</source>
        <translation>速度低下</translation>
    </message>
    <message>
        <source>Type a set in</source>
        <translation>セットを入力</translation>
    </message>
    <message>
        <source>Why this today?</source>
        <translation>今日これなのはなぜ？</translation>
    </message>
    <message>
        <source>Loads by the chart</source>
        <translation>表による負荷</translation>
    </message>
    <message>
        <source>Stands large</source>
        <translation>大きく表示</translation>
    </message>
</context>
<context>
    <name>SharerStrip</name>
    <message>
        <source>Who lifts next?</source>
        <translation>次は誰？</translation>
    </message>
    <message>
        <source>Who lifts next? End this set first.</source>
        <translation>次は誰？先にこのセットを終えてください。</translation>
    </message>
    <message>
        <source>%1 lifts now</source>
        <translation>今は %1</translation>
    </message>
    <message>
        <source>%1 lifts next</source>
        <translation>次は %1</translation>
    </message>
</context>
<context>
    <name>SharingSheet</name>
    <message>
        <source>Who shares this sensor?</source>
        <translation>このセンサーを使うのは？</translation>
    </message>
    <message>
        <source>Picked by hand. They stand above the set; one tap changes who lifts next.</source>
        <translation>手で選びました。セットの上に並び、タップで次の人に替わります。</translation>
    </message>
    <message>
        <source>Those of the same rack and round, as Squad shares them out. Tap names to pick by hand.</source>
        <translation>チームで分けた同じラックと組の選手です。名前をタップして選べます。</translation>
    </message>
    <message>
        <source>Back to those of the rack</source>
        <translation>ラックの組に戻す</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>近い</translation>
    </message>
</context>
<context>
    <name>SplitSheet</name>
    <message>
        <source>Splits</source>
        <translation>通過タイム</translation>
    </message>
    <message>
        <source>Take the last split off: %1</source>
        <translation>最後の通過を外す：%1</translation>
    </message>
    <message>
        <source>Split at, m</source>
        <translation>通過点、m</translation>
    </message>
    <message>
        <source>Time, s</source>
        <translation>タイム、s</translation>
    </message>
    <message>
        <source>Time: %1 s</source>
        <translation>タイム：%1 s</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>小数点</translation>
    </message>
    <message>
        <source>Erase a digit</source>
        <translation>1桁消す</translation>
    </message>
    <message>
        <source>Add the split</source>
        <translation>通過タイムを追加</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>完了</translation>
    </message>
</context>
<context>
    <name>SpokenWords</name>
    <message>
        <source>week %1</source>
        <translation>%1週</translation>
    </message>
    <message>
        <source>week %1 to %2</source>
        <translation>第%1週から第%2週</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 %2から%3</translation>
    </message>
    <message>
        <source>Across: %1.</source>
        <translation>横軸：%1。</translation>
    </message>
    <message>
        <source>Up: %1.</source>
        <translation>縦軸：%1。</translation>
    </message>
    <message>
        <source>%1: %2 to %3.</source>
        <translation>%1：%2から%3。</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%2から%1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1：%2。</translation>
    </message>
    <message>
        <source>%1: lowest %2, highest %3.</source>
        <translation>%1：最小%2、最大%3。</translation>
    </message>
    <message>
        <source>%1 (no evidence)</source>
        <translation>%1（根拠外）</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 は %2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 を %2</translation>
    </message>
    <message>
        <source>%1, 1 mark: %2.</source>
        <translation>%1、1点：%2。</translation>
    </message>
    <message>
        <source>%1, %2 marks: %3.</source>
        <translation>%1、%2点：%3。</translation>
    </message>
    <message>
        <source>first %1; last %2; lowest %3, highest %4</source>
        <translation>最初 %1、最後 %2、最小 %3、最大 %4</translation>
    </message>
    <message>
        <source>Now on %1.</source>
        <translation>現在は %1。</translation>
    </message>
    <message>
        <source>Latest: %1.</source>
        <translation>最新：%1。</translation>
    </message>
    <message>
        <source>Latest: %1, inside the target band.</source>
        <translation>最新：%1、目標帯の中。</translation>
    </message>
    <message>
        <source>Latest: %1, outside the target band.</source>
        <translation>最新：%1、目標帯の外。</translation>
    </message>
    <message>
        <source>In %1: %2.</source>
        <translation>%1：%2。</translation>
    </message>
    <message>
        <source>Chosen: %1 in %2.</source>
        <translation>選択：%2 の %1。</translation>
    </message>
</context>
<context>
    <name>SprintTrendCard</name>
    <message>
        <source>Sprint times</source>
        <translation>スプリントタイム</translation>
    </message>
    <message>
        <source>Which runs count</source>
        <translation>数える走り</translation>
    </message>
</context>
<context>
    <name>SquadPage</name>
    <message>
        <source>Squad</source>
        <translation>チーム</translation>
    </message>
    <message>
        <source>Who trains here?</source>
        <translation>ここで練習するのは？</translation>
    </message>
    <message>
        <source>Add yourself, or each athlete you coach. Lifts, sprints and decisions are kept for each athlete apart, on this device only.</source>
        <translation>自分、または指導する選手を追加します。種目、スプリント、判断は選手ごとに、この端末だけに保存されます。</translation>
    </message>
    <message>
        <source>Add an athlete</source>
        <translation>選手を追加</translation>
    </message>
    <message>
        <source>Look around with a demo squad</source>
        <translation>見本チームで見て回る</translation>
    </message>
    <message>
        <source>Look at the demo squad</source>
        <translation>見本チームを見る</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>保管庫</translation>
    </message>
    <message>
        <source>Import sets from a file</source>
        <translation>セットをファイルから取り込む</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>注意</translation>
    </message>
    <message>
        <source>What to know before you lift heavy, or jump from a box.</source>
        <translation>高重量を挙げる前、台から跳ぶ前に知ること。</translation>
    </message>
    <message>
        <source>Read the cautions</source>
        <translation>注意を読む</translation>
    </message>
</context>
<context>
    <name>SquadParts</name>
    <message>
        <source>Athletes</source>
        <translation>選手</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>今日</translation>
    </message>
    <message>
        <source>This device</source>
        <translation>この端末</translation>
    </message>
</context>
<context>
    <name>SquadToday</name>
    <message>
        <source>Squad</source>
        <translation>チーム</translation>
    </message>
    <message>
        <source>Training group</source>
        <translation>練習グループ</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>表示</translation>
    </message>
    <message>
        <source>Who lifts what</source>
        <translation>誰が何を</translation>
    </message>
    <message>
        <source>Racks and rounds</source>
        <translation>ラックと組</translation>
    </message>
    <message>
        <source>One rack less</source>
        <translation>ラックを1台減らす</translation>
    </message>
    <message>
        <source>One rack more</source>
        <translation>ラックを1台増やす</translation>
    </message>
    <message>
        <source>Nobody is due</source>
        <translation>予定者なし</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
</context>
<context>
    <name>StairStepsWords</name>
    <message>
        <source>The first rung of this part of the season.</source>
        <translation>シーズンのこの部分で最初の段です。</translation>
    </message>
    <message>
        <source>%1 days on %2 come first.</source>
        <translation>先に %2 で%1日が必要です。</translation>
    </message>
    <message>
        <source>Not before %1, which begins on %2.</source>
        <translation>%2 に始まる %1 より前にはなりません。</translation>
    </message>
    <message>
        <source>The rungs below it need the time that is left before the main competition.</source>
        <translation>下の段には、主要競技会までに残る時間が必要です。</translation>
    </message>
</context>
<context>
    <name>StatusPill</name>
    <message>
        <source>%1. %2</source>
        <translation>%1。%2</translation>
    </message>
</context>
<context>
    <name>StepList</name>
    <message>
        <source>%1. %2</source>
        <translation>%1。%2</translation>
    </message>
</context>
<context>
    <name>StepsSheet</name>
    <message>
        <source>Steps of the ladder</source>
        <translation>ラダーの段</translation>
    </message>
</context>
<context>
    <name>StopSign</name>
    <message>
        <source>Stop the set</source>
        <translation>セットを止める</translation>
    </message>
</context>
<context>
    <name>SureRow</name>
    <message>
        <source>%1: %2, %3. %4</source>
        <translation>%1：%2、%3。%4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
</context>
<context>
    <name>TeachSheet</name>
    <message>
        <source>Teach %1</source>
        <translation>%1 に教える</translation>
    </message>
    <message>
        <source>Connecting. Keep it near.</source>
        <translation>接続中。近くに置いてください。</translation>
    </message>
    <message>
        <source>Learning</source>
        <translation>学習中</translation>
    </message>
    <message>
        <source>Keep what was learned as</source>
        <translation>学んだものの名前</translation>
    </message>
    <message>
        <source>So high</source>
        <translation>この高さ</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>スタート</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>停止</translation>
    </message>
    <message>
        <source>The step before again</source>
        <translation>前の手順をもう一度</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>中止</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>保存</translation>
    </message>
    <message>
        <source>Start over</source>
        <translation>最初から</translation>
    </message>
</context>
<context>
    <name>Tile</name>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1：%2。%3</translation>
    </message>
</context>
<context>
    <name>TouchedPoint</name>
    <message>
        <source>Touch a point to see its session.</source>
        <translation>点をタップするとその練習が見えます。</translation>
    </message>
    <message>
        <source>The point before</source>
        <translation>前の点</translation>
    </message>
    <message>
        <source>The next point</source>
        <translation>次の点</translation>
    </message>
    <message>
        <source>Close the session</source>
        <translation>練習を閉じる</translation>
    </message>
    <message>
        <source>The session&apos;s sets</source>
        <translation>その練習のセット</translation>
    </message>
</context>
<context>
    <name>TrackPage</name>
    <message>
        <source>Track</source>
        <translation>トラック</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>スプリント</translation>
    </message>
    <message>
        <source>Jumps</source>
        <translation>ジャンプ</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>練習</translation>
    </message>
    <message>
        <source>Add a run</source>
        <translation>走りを追加</translation>
    </message>
    <message>
        <source>Add jumps</source>
        <translation>ジャンプを追加</translation>
    </message>
    <message>
        <source>Add work</source>
        <translation>練習を追加</translation>
    </message>
    <message>
        <source>Delete %1, %2</source>
        <translation>%1、%2 を削除</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>以前のものを表示</translation>
    </message>
    <message>
        <source>Import runs from a file</source>
        <translation>走りをファイルから取り込む</translation>
    </message>
    <message>
        <source>Go to Squad</source>
        <translation>チームへ</translation>
    </message>
</context>
<context>
    <name>TrackWords</name>
    <message>
        <source>blocks</source>
        <translation>ブロック</translation>
    </message>
    <message>
        <source>standing start</source>
        <translation>スタンディング</translation>
    </message>
    <message>
        <source>flying</source>
        <translation>加速走</translation>
    </message>
    <message>
        <source>falling start</source>
        <translation>倒れ込みスタート</translation>
    </message>
    <message>
        <source>rolling start</source>
        <translation>ローリングスタート</translation>
    </message>
    <message>
        <source>hand timed</source>
        <translation>手動計時</translation>
    </message>
    <message>
        <source>gates</source>
        <translation>光電管</translation>
    </message>
    <message>
        <source>video</source>
        <translation>動画</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>電気計時</translation>
    </message>
    <message>
        <source>track</source>
        <translation>トラック</translation>
    </message>
    <message>
        <source>indoor</source>
        <translation>室内</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>芝</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>スプリント</translation>
    </message>
    <message>
        <source>Flying sprints</source>
        <translation>加速走</translation>
    </message>
    <message>
        <source>Resisted sprints</source>
        <translation>牽引走</translation>
    </message>
    <message>
        <source>Hill sprints</source>
        <translation>坂道走</translation>
    </message>
    <message>
        <source>Easy runs</source>
        <translation>流し</translation>
    </message>
    <message>
        <source>Drop jump</source>
        <translation>ドロップジャンプ</translation>
    </message>
    <message>
        <source>Counter-movement jump</source>
        <translation>反動ジャンプ</translation>
    </message>
    <message>
        <source>Squat jump</source>
        <translation>反動なし</translation>
    </message>
    <message>
        <source>Standing long jump</source>
        <translation>立幅跳</translation>
    </message>
    <message>
        <source>Long jump</source>
        <translation>走幅跳</translation>
    </message>
    <message>
        <source>Bounds</source>
        <translation>バウンディング</translation>
    </message>
    <message>
        <source>spikes</source>
        <translation>スパイク</translation>
    </message>
    <message>
        <source>flats</source>
        <translation>フラット</translation>
    </message>
    <message>
        <source>Flying %1</source>
        <translation>加速走 %1</translation>
    </message>
    <message>
        <source>%1 from blocks</source>
        <translation>ブロックから %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
</context>
<context>
    <name>TrendsPage</name>
    <message>
        <source>Trends</source>
        <translation>推移</translation>
    </message>
    <message>
        <source>Nothing measured yet</source>
        <translation>まだ測定がありません</translation>
    </message>
    <message>
        <source>Each session begins with a probe set: three repetitions with full intent at the same load. From the third session on, this page shows whether you reach peak velocity sooner.</source>
        <translation>毎回の練習は確認セットで始まります：同じ負荷で全力の意図の3回。3回目の練習から、最大速度により早く達しているかがここに出ます。</translation>
    </message>
</context>
<context>
    <name>TrendsWords</name>
    <message>
        <source>left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>自体重</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>ウォームアップ</translation>
    </message>
    <message>
        <source>Probe set</source>
        <translation>確認セット</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>維持</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>本番</translation>
    </message>
    <message>
        <source>hand timed</source>
        <translation>手動計時</translation>
    </message>
    <message>
        <source> Note: %1</source>
        <translation> メモ：%1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source> × %1</source>
        <translation> × %1</translation>
    </message>
    <message>
        <source>fastest %1</source>
        <translation>最速 %1</translation>
    </message>
    <message>
        <source>loss %1</source>
        <translation>低下 %1</translation>
    </message>
    <message>
        <source>effort %1</source>
        <translation>きつさ %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>%1 から</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>接地 %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>滞空 %1</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>Drop jump %1.</source>
        <translation>ドロップジャンプ %1。</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>風 %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>助走 %1</translation>
    </message>
    <message>
        <source>race</source>
        <translation>競技会</translation>
    </message>
</context>
<context>
    <name>TypedSetSheet</name>
    <message>
        <source>A set without a sensor</source>
        <translation>センサーなしのセット</translation>
    </message>
    <message>
        <source>Load and repetitions are enough. Velocity and time count only if you measured them.</source>
        <translation>負荷と回数で十分です。速度と時間は測った場合だけ数えます。</translation>
    </message>
    <message>
        <source>Kind of set</source>
        <translation>セットの種類</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>本番</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>確認</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>ウォームアップ</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>維持</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>負荷、%1</translation>
    </message>
    <message>
        <source>By plates</source>
        <translation>プレートで</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>回数</translation>
    </message>
    <message>
        <source>%1, ms (if measured)</source>
        <translation>%1、ms（測った場合）</translation>
    </message>
    <message>
        <source>Effort, 1 easy to 10 all out (tells 1RM)</source>
        <translation>きつさ、1楽～10全力（1RM が分かる）</translation>
    </message>
    <message>
        <source>Save the set</source>
        <translation>セットを保存</translation>
    </message>
    <message>
        <source>%1, m/s (if measured)</source>
        <translation>%1、m/s（測定した場合）</translation>
    </message>
</context>
<context>
    <name>UnitsWords</name>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>ms</source>
        <translation>ms</translation>
    </message>
    <message>
        <source>m/s</source>
        <translation>m/s</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
</context>
<context>
    <name>WaitingForSet</name>
    <message>
        <source>By plates</source>
        <translation>プレートで</translation>
    </message>
</context>
<context>
    <name>WellnessSheet</name>
    <message>
        <source>How are you today?</source>
        <translation>今日の調子は？</translation>
    </message>
    <message>
        <source>Pain, 0 none to 10 the worst</source>
        <translation>痛み、0なし～10最悪</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>どこ？</translation>
    </message>
    <message>
        <source>Any of these?</source>
        <translation>当てはまるものは？</translation>
    </message>
    <message>
        <source>Sharp pain</source>
        <translation>鋭い痛み</translation>
    </message>
    <message>
        <source>Limping</source>
        <translation>足を引きずる</translation>
    </message>
    <message>
        <source>New hamstring pain</source>
        <translation>ハムストリングスの新しい痛み</translation>
    </message>
    <message>
        <source>No sprinting and no hinge today. See a clinician before you sprint or lift heavy again.</source>
        <translation>今日はスプリントとヒンジ種目をしません。再び走る、重く挙げる前に医師に相談してください。</translation>
    </message>
    <message>
        <source>Soreness, 0 none to 10 very sore</source>
        <translation>筋肉痛、0なし～10強い</translation>
    </message>
    <message>
        <source>Sleep, hours</source>
        <translation>睡眠、時間</translation>
    </message>
    <message>
        <source>Body mass, %1 (optional)</source>
        <translation>体重、%1（任意）</translation>
    </message>
    <message>
        <source>Your word counts before every rule</source>
        <translation>どの規則よりあなたの言葉が優先</translation>
    </message>
    <message>
        <source>I do not want to lift today</source>
        <translation>今日は挙げたくない</translation>
    </message>
    <message>
        <source>Keep this</source>
        <translation>これを残す</translation>
    </message>
</context>
<context>
    <name>WellnessWords</name>
    <message>
        <source>somewhere else</source>
        <translation>その他の場所</translation>
    </message>
    <message>
        <source>Say where it hurts.</source>
        <translation>どこが痛むか書いてください。</translation>
    </message>
    <message>
        <source>does not want to lift</source>
        <translation>挙げたくない</translation>
    </message>
    <message>
        <source>slept %1 h</source>
        <translation>睡眠 %1時間</translation>
    </message>
    <message>
        <source>soreness %1</source>
        <translation>筋肉痛 %1</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>痛みなし</translation>
    </message>
    <message>
        <source>pain %1</source>
        <translation>痛み %1</translation>
    </message>
    <message>
        <source>pain %1, %2</source>
        <translation>痛み %1、%2</translation>
    </message>
    <message>
        <source>sharp pain</source>
        <translation>鋭い痛み</translation>
    </message>
    <message>
        <source>limping</source>
        <translation>足を引きずる</translation>
    </message>
    <message>
        <source>new hamstring pain</source>
        <translation>ハムストリングスの新しい痛み</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Why this today?</source>
        <translation>今日これなのはなぜ？</translation>
    </message>
</context>
<context>
    <name>WorkFormWords</name>
    <message>
        <source>That is faster than anyone has run. Check distance and time.</source>
        <translation>それほど速く走った人はいません。距離とタイムを確かめてください。</translation>
    </message>
    <message>
        <source>That is slower than walking. Check distance and time.</source>
        <translation>歩くより遅いです。距離とタイムを確かめてください。</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>その日はまだ来ていません。</translation>
    </message>
</context>
<context>
    <name>WorkPart</name>
    <message>
        <source>Delete %1, %2</source>
        <translation>%1、%2 を削除</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>以前のものを表示</translation>
    </message>
    <message>
        <source>No work counted yet</source>
        <translation>練習の記録がまだありません</translation>
    </message>
    <message>
        <source>Sprints without a clock, runs behind a sled, up a hill or easy: how many of how many metres. The weeks then tell how many metres were run, and how many of them fast.</source>
        <translation>計時なしのスプリント、そり、坂、流し：何mを何本か。週ごとに走った距離と、そのうち高速の距離が分かります。</translation>
    </message>
</context>
<context>
    <name>WorkSheet</name>
    <message>
        <source>Add work</source>
        <translation>練習を追加</translation>
    </message>
    <message>
        <source>Kind of work</source>
        <translation>練習の種類</translation>
    </message>
    <message>
        <source>Sprints</source>
        <translation>スプリント</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>加速走</translation>
    </message>
    <message>
        <source>Resisted</source>
        <translation>牽引</translation>
    </message>
    <message>
        <source>Hill</source>
        <translation>坂</translation>
    </message>
    <message>
        <source>Easy</source>
        <translation>流し</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>本数</translation>
    </message>
    <message>
        <source>Zone of each, m</source>
        <translation>各区間、m</translation>
    </message>
    <message>
        <source>Metres of each</source>
        <translation>1本の距離、m</translation>
    </message>
    <message>
        <source>Load on the sled, %1 (optional)</source>
        <translation>そりの負荷、%1（任意）</translation>
    </message>
    <message>
        <source>Slope, % (optional)</source>
        <translation>傾斜、%（任意）</translation>
    </message>
    <message>
        <source>Effort, 1 to 10. From 9 on untimed sprints count as fast metres</source>
        <translation>きつさ、1～10。9以上なら計時なしのスプリントも高速の距離に数えます</translation>
    </message>
    <message>
        <source>Best time of one run, s (optional)</source>
        <translation>1本の最高タイム、s（任意）</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>計時</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>手動</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>光電管</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>動画</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>電気計時</translation>
    </message>
    <message>
        <source>Rest between runs, minutes (optional)</source>
        <translation>本間の休憩、分（任意）</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>少なく</translation>
    </message>
    <message>
        <source>More</source>
        <translation>もっと</translation>
    </message>
    <message>
        <source>Surface, shoes, wind, note</source>
        <translation>走路、シューズ、風、メモ</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>走路</translation>
    </message>
    <message>
        <source>Track</source>
        <translation>トラック</translation>
    </message>
    <message>
        <source>Indoor</source>
        <translation>室内</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>芝</translation>
    </message>
    <message>
        <source>Shoes</source>
        <translation>シューズ</translation>
    </message>
    <message>
        <source>Spikes</source>
        <translation>スパイク</translation>
    </message>
    <message>
        <source>Flats</source>
        <translation>フラット</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>指定なし</translation>
    </message>
    <message>
        <source>Wind, m/s, tail wind positive (optional)</source>
        <translation>風、m/s、追い風が正（任意）</translation>
    </message>
    <message>
        <source>+0,8 or -1.2</source>
        <translation>+0,8 または -1.2</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>メモ</translation>
    </message>
    <message>
        <source>Save the work</source>
        <translation>練習を保存</translation>
    </message>
    <message>
        <source>Day, like %1</source>
        <translation>日付（例 %1）</translation>
    </message>
</context>
<context>
    <name>WorkWeeks</name>
    <message>
        <source>Metres by week</source>
        <translation>週ごとの距離</translation>
    </message>
    <message>
        <source>Fast: at 90 % of best speed or above. A week is marked above 1.3 times the mean of the four weeks before it: a starting value of this program; the worth of such ratios is disputed.</source>
        <translation>高速：最高速度の 90 % 以上。前4週の平均の1.3倍を超えた週に印を付けます：このプログラムの開始値で、こうした比の意味には議論があります。</translation>
    </message>
</context>
<context>
    <name>fleetrung::ui::PoseDrawing</name>
    <message>
        <source>Main side up</source>
        <translation>主面を上</translation>
    </message>
    <message>
        <source>Main side down</source>
        <translation>主面を下</translation>
    </message>
    <message>
        <source>On a long edge</source>
        <translation>長い縁で立てる</translation>
    </message>
    <message>
        <source>On the other long edge</source>
        <translation>もう一方の長い縁で立てる</translation>
    </message>
    <message>
        <source>On a short end</source>
        <translation>短い端で立てる</translation>
    </message>
    <message>
        <source>On the other short end</source>
        <translation>もう一方の短い端で立てる</translation>
    </message>
    <message>
        <source>Main side up, one turn to the left</source>
        <translation>主面を上、左へ1回転</translation>
    </message>
    <message>
        <source>On a long edge, one turn to the left</source>
        <translation>長い縁で、左へ1回転</translation>
    </message>
    <message>
        <source>On a short end, one turn to the left</source>
        <translation>短い端で、左へ1回転</translation>
    </message>
    <message>
        <source>Raised straight up</source>
        <translation>まっすぐ上げる</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::AppViewModel</name>
    <message>
        <source>Stored recording</source>
        <translation>保存された記録</translation>
    </message>
    <message>
        <source>The set is saved.</source>
        <translation>セットを保存しました。</translation>
    </message>
    <message>
        <source>Kept. The day is decided anew.</source>
        <translation>記録しました。今日の判断をやり直します。</translation>
    </message>
    <message>
        <source>The lift is lighter today.</source>
        <translation>今日この種目は軽くします。</translation>
    </message>
    <message>
        <source>Kept: you keep the plan.</source>
        <translation>記録しました：計画どおりに進めます。</translation>
    </message>
    <message>
        <source>The calendar is in %1</source>
        <translation>カレンダーの場所：%1</translation>
    </message>
    <message>
        <source>The demo squad is not made.</source>
        <translation>見本チームは作られませんでした。</translation>
    </message>
    <message>
        <source>A set is under way. End it first.</source>
        <translation>セットの途中です。先に終えてください。</translation>
    </message>
    <message>
        <source>Playing an invented squad&apos;s seasons: %1 %</source>
        <translation>架空のチームのシーズンを再生中：%1 %</translation>
    </message>
    <message>
        <source>Demo squad: everything here is invented.</source>
        <translation>見本チーム：ここにあるものはすべて架空です。</translation>
    </message>
    <message>
        <source>The set is changed.</source>
        <translation>セットを変更しました。</translation>
    </message>
    <message>
        <source>The set is deleted.</source>
        <translation>セットを削除しました。</translation>
    </message>
    <message>
        <source>The repetition is struck out.</source>
        <translation>この反復を取り消しました。</translation>
    </message>
    <message>
        <source>The repetition counts again.</source>
        <translation>この反復をまた数えます。</translation>
    </message>
    <message>
        <source>The repetition is evidence again.</source>
        <translation>この反復を再び根拠にします。</translation>
    </message>
    <message>
        <source>The repetition is no evidence.</source>
        <translation>この反復は根拠にしません。</translation>
    </message>
    <message>
        <source>The side is changed.</source>
        <translation>左右を変更しました。</translation>
    </message>
    <message>
        <source>The repetition is added.</source>
        <translation>反復を追加しました。</translation>
    </message>
    <message>
        <source>1 run is added.</source>
        <translation>1本を追加しました。</translation>
    </message>
    <message>
        <source>1 set is added.</source>
        <translation>1セットを追加しました。</translation>
    </message>
    <message>
        <source>%1 runs are added.</source>
        <translation>%1本を追加しました。</translation>
    </message>
    <message>
        <source>%1 sets are added.</source>
        <translation>%1セットを追加しました。</translation>
    </message>
    <message>
        <source>A set was cut off, and what it was is not known.</source>
        <translation>途切れたセットがありますが、内容は分かりません。</translation>
    </message>
    <message>
        <source>%1: the set was cut off too early to be read.</source>
        <translation>%1：途切れるのが早すぎて読めません。</translation>
    </message>
    <message>
        <source>1 repetition is kept</source>
        <translation>1回を保存</translation>
    </message>
    <message>
        <source>%1 repetitions are kept</source>
        <translation>%1回を保存</translation>
    </message>
    <message>
        <source>%1: the set was cut off. %2.</source>
        <translation>%1：セットが途切れました。%2。</translation>
    </message>
    <message>
        <source>What was left of the set is dropped.</source>
        <translation>セットの残りを捨てました。</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>season, athlete</comment>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>The report is being written …</source>
        <translation>レポートを作成中…</translation>
    </message>
    <message>
        <source>The report is in %1</source>
        <translation>レポートの場所：%1</translation>
    </message>
    <message>
        <source>The tables are being written …</source>
        <translation>表を作成中…</translation>
    </message>
    <message>
        <source>%1 tables in %2; data_dictionary.csv explains each column</source>
        <translation>%1個の表：%2。各列の説明は data_dictionary.csv にあります</translation>
    </message>
    <message>
        <source>%1 is forgotten.</source>
        <translation>%1 を忘れました。</translation>
    </message>
    <message>
        <source>The sensor map is in %1</source>
        <translation>センサー記述の場所：%1</translation>
    </message>
    <message>
        <source>%1 can be chosen now.</source>
        <translation>%1 を選べるようになりました。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>The run is saved.</source>
        <translation>走りを保存しました。</translation>
    </message>
    <message>
        <source>The run is deleted.</source>
        <translation>走りを削除しました。</translation>
    </message>
    <message>
        <source>The jump is deleted.</source>
        <translation>ジャンプを削除しました。</translation>
    </message>
    <message>
        <source>The jump is saved.</source>
        <translation>ジャンプを保存しました。</translation>
    </message>
    <message>
        <source>%1 jumps are saved.</source>
        <translation>ジャンプ%1本を保存しました。</translation>
    </message>
    <message>
        <source>The work is saved.</source>
        <translation>練習を保存しました。</translation>
    </message>
    <message>
        <source>The work is deleted.</source>
        <translation>練習を削除しました。</translation>
    </message>
    <message>
        <source>%1 is saved.</source>
        <translation>%1 を保存しました。</translation>
    </message>
    <message>
        <source>%1 is in the archive, with all that was done.</source>
        <translation>%1 を記録とともに保管庫に入れました。</translation>
    </message>
    <message>
        <source>%1 is back.</source>
        <translation>%1 が戻りました。</translation>
    </message>
    <message>
        <source>A set is under way and stays with who began it. End it first.</source>
        <translation>セットの途中です。始めた人のものなので、先に終えてください。</translation>
    </message>
    <message>
        <source>Kept: you follow this.</source>
        <translation>記録しました：これに従います。</translation>
    </message>
    <message>
        <source>Kept: you decided otherwise.</source>
        <translation>記録しました：別の判断をしました。</translation>
    </message>
    <message>
        <source>The season is laid out.</source>
        <translation>シーズンを組みました。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::BenchFeedback</name>
    <message>
        <source>Stop the set</source>
        <translation>セットを止める</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>根拠外</translation>
    </message>
    <message>
        <source>%1, sooner</source>
        <translation>%1、早い</translation>
    </message>
    <message>
        <source>%1, later</source>
        <translation>%1、遅い</translation>
    </message>
    <message>
        <source>Sensor lost</source>
        <translation>センサー切断</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>開始</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::BenchViewModel</name>
    <message>
        <source>load to be found</source>
        <translation>負荷は未定</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>自体重</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 ladder, rung %2 of %3</source>
        <translation>%1ラダー、%3段中%2段目</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>目標 %1</translation>
    </message>
    <message>
        <source>done, %1 sets</source>
        <translation>完了、%1セット</translation>
    </message>
    <message>
        <source>%1 of %2 sets done</source>
        <translation>%2セット中%1セット完了</translation>
    </message>
    <message>
        <source>not begun</source>
        <translation>未開始</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>ベンチ</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1回</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1回</translation>
    </message>
    <message>
        <source>Drop time</source>
        <translation>下降時間</translation>
    </message>
    <message>
        <source>Contact time</source>
        <translation>接地時間</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>最大速度到達時間</translation>
    </message>
    <message>
        <source>ms from the quickest descent to rest</source>
        <translation>最速の下降から静止まで ms</translation>
    </message>
    <message>
        <source>ms to peak velocity</source>
        <translation>最大速度まで ms</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>inside the band  %1</source>
        <translation>目標帯の中  %1</translation>
    </message>
    <message>
        <source>%1 ms sooner than the band</source>
        <translation>目標帯より %1 ms 早い</translation>
    </message>
    <message>
        <source>%1 ms later than the band</source>
        <translation>目標帯より %1 ms 遅い</translation>
    </message>
    <message>
        <source>two peaks: no evidence</source>
        <translation>山が二つ：根拠外</translation>
    </message>
    <message>
        <source>peak velocity</source>
        <translation>最大速度</translation>
    </message>
    <message>
        <source>mean velocity</source>
        <translation>平均速度</translation>
    </message>
    <message>
        <source>range to peak</source>
        <translation>最大速度までの距離</translation>
    </message>
    <message>
        <source>range</source>
        <translation>可動域</translation>
    </message>
    <message>
        <source>rung %1</source>
        <translation>段 %1</translation>
    </message>
    <message>
        <source>stop at %1</source>
        <translation>%1 で終了</translation>
    </message>
    <message>
        <source>By the loss %1: a guess. The stop rests on the loss.</source>
        <translation>低下から見て%1：推測です。終了は低下で決まります。</translation>
    </message>
    <message>
        <source>Velocity has fallen by %1; this set ends at %2.</source>
        <translation>速度が %1 落ちました。このセットは %2 で終わります。</translation>
    </message>
    <message>
        <source>Warm-up: %1</source>
        <translation>ウォームアップ：%1</translation>
    </message>
    <message>
        <source>Probe: %1, full intent</source>
        <translation>確認：%1、全力の意図で</translation>
    </message>
    <message>
        <source>Work: %1 sets of %2</source>
        <translation>本番：%2 を%1セット</translation>
    </message>
    <message>
        <source>rested</source>
        <translation>休憩済み</translation>
    </message>
    <message>
        <source>rest %1:%2</source>
        <translation>休憩 %1:%2</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>前回 %1</translation>
    </message>
    <message>
        <source>No sprinting today: pain forbids it.</source>
        <translation>今日は痛みがあるためスプリントをしません。</translation>
    </message>
    <message>
        <source>%1 at a load to be found</source>
        <translation>%1、負荷は未定</translation>
    </message>
    <message>
        <source>%1 at body mass</source>
        <translation>%1、自体重</translation>
    </message>
    <message>
        <source>Primer: light and fast, no probe set</source>
        <translation>刺激：軽く速く、確認セットなし</translation>
    </message>
    <message>
        <source>Box %1</source>
        <translation>台 %1</translation>
    </message>
    <message>
        <source>%1 contacts; at most %2 today</source>
        <translation>接地%1回、今日は最大%2回</translation>
    </message>
    <message>
        <source>Maintenance: %1 × %2, %3</source>
        <translation>維持：%1 × %2、%3</translation>
    </message>
    <message>
        <source>Warm-up check</source>
        <translation>ウォームアップ確認</translation>
    </message>
    <message>
        <source>Warm-up check: not enough to compare with</source>
        <translation>ウォームアップ確認：比べる材料が不足</translation>
    </message>
    <message>
        <source>Warm-up check: as usual</source>
        <translation>ウォームアップ確認：いつもどおり</translation>
    </message>
    <message>
        <source>Warm-up check: slower than usual</source>
        <translation>ウォームアップ確認：いつもより遅い</translation>
    </message>
    <message>
        <source>Warm-up check: less today</source>
        <translation>ウォームアップ確認：今日は減らす</translation>
    </message>
    <message>
        <source>Warm-up check: you keep the plan</source>
        <translation>ウォームアップ確認：計画どおり</translation>
    </message>
    <message>
        <source>Lift the last two warm-up loads with full intent, as warm-up sets: %1 and %2. Their velocity is then compared with your own at these loads. It can take load or sets off today, never put any on.</source>
        <translation>ウォームアップの最後の2つの負荷 %1 と %2 を、ウォームアップのセットとして全力の意図で挙げます。その速度を、同じ負荷でのあなたの速度と比べます。今日の負荷やセットを減らすことはあっても、増やすことはありません。</translation>
    </message>
    <message>
        <source>%1 less load</source>
        <translation>負荷を %1 減らす</translation>
    </message>
    <message>
        <source>one set less</source>
        <translation>1セット減</translation>
    </message>
    <message>
        <source>%1 sets less</source>
        <translation>%1セット減</translation>
    </message>
    <message>
        <source>%1 of the sets</source>
        <translation>セットの %1</translation>
    </message>
    <message>
        <source>Proposed: %1. %2</source>
        <translation>提案：%1。%2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>、 </translation>
    </message>
    <message>
        <source>Say why, in a few words.</source>
        <translation>理由を短く書いてください。</translation>
    </message>
    <message>
        <source>probe set</source>
        <translation>確認セット</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>ウォームアップ</translation>
    </message>
    <message>
        <source>maintenance set</source>
        <translation>維持セット</translation>
    </message>
    <message>
        <source>set %1 of %2</source>
        <translation>%2セット中%1セット目</translation>
    </message>
    <message>
        <source>extra set %1</source>
        <translation>追加セット %1</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>予定 %1</translation>
    </message>
    <message>
        <source>rung %1 of %2</source>
        <translation>%2段中%1段目</translation>
    </message>
    <message>
        <source>Load on the bar, %1</source>
        <translation>バーの負荷、%1</translation>
    </message>
    <message>
        <source>No sensor</source>
        <translation>センサーなし</translation>
    </message>
    <message>
        <source>%1 ready</source>
        <translation>%1 準備完了</translation>
    </message>
    <message>
        <source>%1 streaming</source>
        <translation>%1 受信中</translation>
    </message>
    <message>
        <source>%1 lost. The set goes on when it is back.</source>
        <translation>%1 が切れました。戻ればセットを続けます。</translation>
    </message>
    <message>
        <source>%1 has ended</source>
        <translation>%1 が終了</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>Not by the bar sensor</source>
        <translation>バーのセンサーは使いません</translation>
    </message>
    <message>
        <source>Start the set</source>
        <translation>セットを始める</translation>
    </message>
    <message>
        <source>Enter the load first</source>
        <translation>先に負荷を入力</translation>
    </message>
    <message>
        <source>Replay the last recording</source>
        <translation>前回の記録を再生</translation>
    </message>
    <message>
        <source>No sensor to start</source>
        <translation>始められるセンサーがありません</translation>
    </message>
    <message>
        <source>Jumps go by contact and flight</source>
        <translation>ジャンプは接地と滞空で見ます</translation>
    </message>
    <message>
        <source>No sensor on the bar</source>
        <translation>バーにセンサーがありません</translation>
    </message>
    <message>
        <source>The sensor was lost</source>
        <translation>センサーが切れました</translation>
    </message>
    <message>
        <source>Waiting for the first repetition</source>
        <translation>最初の反復を待っています</translation>
    </message>
    <message>
        <source>Ready when you are</source>
        <translation>いつでもどうぞ</translation>
    </message>
    <message>
        <source>Enter contact and flight of each jump under Track, Jumps. Type the set in here when it is done.</source>
        <translation>各ジャンプの接地と滞空は「トラック」の「ジャンプ」に入力します。終わったらここにセットを入力してください。</translation>
    </message>
    <message>
        <source>Type the set in, or watch the last recording of this lift again. The plan works without a sensor, too.</source>
        <translation>セットを入力するか、この種目の前回の記録を見られます。センサーなしでも計画は進みます。</translation>
    </message>
    <message>
        <source>Type the set in when it is done: load and repetitions are enough. The plan works without a sensor, too.</source>
        <translation>終わったらセットを入力してください。負荷と回数だけで十分です。センサーなしでも計画は進みます。</translation>
    </message>
    <message>
        <source>It is looked for. Repetitions seen so far are kept.</source>
        <translation>探しています。ここまでの反復は残ります。</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent: the set begins by itself, and ends when the bar has rested for 15 s. Check the load first.</source>
        <translation>少し静止してから全力の意図で挙げます。セットは自動で始まり、バーが15秒止まると終わります。先に負荷を確かめてください。</translation>
    </message>
    <message>
        <source>Stand still for a moment, then lift with full intent. Each repetition is announced as it ends.</source>
        <translation>少し静止してから全力の意図で挙げます。反復が終わるたびに知らせます。</translation>
    </message>
    <message>
        <source>m/s, %1</source>
        <translation>m/s、%1</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::CalibrationViewModel</name>
    <message>
        <source>The sides do not fit together. Start over, and lay it quite flat each time.</source>
        <translation>面が合いません。最初から、毎回きちんと平らに置いてください。</translation>
    </message>
    <message>
        <source>%1 of 6 sides</source>
        <translation>6面中%1面</translation>
    </message>
    <message>
        <source>All six sides are measured.</source>
        <translation>6面すべて測りました。</translation>
    </message>
    <message>
        <source>Lay it down on any side, and let go.</source>
        <translation>どの面でもよいので置いて、手を離します。</translation>
    </message>
    <message>
        <source>Hands off: it is being measured.</source>
        <translation>手を触れずに：測定中です。</translation>
    </message>
    <message>
        <source>Taken. Now another side.</source>
        <translation>取れました。次の面へ。</translation>
    </message>
    <message>
        <source>This side is taken. Lay it on another.</source>
        <translation>この面は済みです。別の面を下に。</translation>
    </message>
    <message>
        <source>It lies slanted: lay it flat.</source>
        <translation>傾いています：平らに置いてください。</translation>
    </message>
    <message>
        <source>%1 m/s²</source>
        <translation>%1 m/s²</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::DidItWorkViewModel</name>
    <message>
        <source>Not judged</source>
        <translation>判定なし</translation>
    </message>
    <message>
        <source>Not enough yet</source>
        <translation>まだ足りない</translation>
    </message>
    <message>
        <source>Not shown</source>
        <translation>示されず</translation>
    </message>
    <message>
        <source>They moved together</source>
        <translation>ともに動いた</translation>
    </message>
    <message>
        <source>For it to speak: begin each lift with its probe set, and time a sprint in each week, always in the same way: distance, run-in, start, timing, surface and shoes, wind within 1 m/s.</source>
        <translation>判定するには：各種目を確認セットで始め、毎週1回スプリントを同じ条件で計ります。距離、助走、スタート、計時、走路、シューズ、風は 1 m/s 以内。</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>%1 未満</translation>
    </message>
    <message>
        <source>Chance alone gives as much in %1 of 100 turned seasons; up to %2 it counts as moved together.</source>
        <translation>偶然だけでも、回転させた100シーズン中%1で同じだけ出ます。%2 までを「ともに動いた」とします。</translation>
    </message>
    <message>
        <source>Same week</source>
        <translation>同じ週</translation>
    </message>
    <message>
        <source>1 week later</source>
        <translation>1週間後</translation>
    </message>
    <message>
        <source>%1 weeks later</source>
        <translation>%1週間後</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2 の %1</translation>
    </message>
    <message>
        <source>weeks with both; rungs: %1, needed %2</source>
        <translation>両方ある週。段：%1、必要 %2</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>%1 weeks with both, %2 rungs</source>
        <translation>両方ある週 %1、段 %2</translation>
    </message>
    <message>
        <source>, chance reaches %1</source>
        <translation>、偶然は %1 に届く</translation>
    </message>
    <message>
        <source>This is no proof of cause.</source>
        <translation>これは原因の証明ではありません。</translation>
    </message>
    <message>
        <source>What is compared: how much quicker than that stay&apos;s own line the bar reached peak velocity, in the weeks of each stay on a rung; and how much better than the season&apos;s own line the sprints in the same conditions were, in the same week and one to four weeks later.

Why no plain correlation is shown: time to peak velocity falls because the plan shortens the range, and sprint times fall because summer comes. As they are, the two always go together, whether the lifts did anything or not. So both trends are taken out first.

How it is judged: the weeks of the bar are cut into three blocks, and each is turned round on itself in all combinations. Chance is the share of these turned seasons in which the strongest of all five lags is as strong as yours.

What it cannot see: in simulated seasons with a realistic relation it spoke in 6 of 100, with a very large one in 76. Not shown does not mean not there. And that two things move together does not say that one made the other: sleep, school or weather can move both.</source>
        <translation>比べるもの：各段に留まった週に、その期間自身の線よりどれだけ早くバーが最大速度に達したか。そして同じ条件のスプリントが、シーズン自身の線よりどれだけ良かったか。同じ週と1～4週間後を見ます。

単純な相関を示さない理由：最大速度到達時間は計画が可動域を短くするから下がり、タイムは夏が来るから縮みます。そのままでは、効果の有無にかかわらず必ず一緒に動きます。そこで両方の傾向を先に取り除きます。

判定のしかた：バーの週を3つのまとまりに分け、それぞれをすべての組み合わせで回します。偶然とは、回したシーズンのうち、5つのずれの中で最も強いものがあなたと同じくらい強い割合です。

分からないこと：現実的な関係を入れた模擬シーズンでは100のうち6、非常に大きい関係では76で示されました。示されないことは、ないことを意味しません。二つがともに動いても、一方が他方を起こしたとは言えません。睡眠、学校、天候が両方を動かすこともあります。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::DoneSetsViewModel</name>
    <message>
        <source>probe set</source>
        <translation>確認セット</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>ウォームアップ</translation>
    </message>
    <message>
        <source>maintenance set</source>
        <translation>維持セット</translation>
    </message>
    <message>
        <source>work set</source>
        <translation>本番セット</translation>
    </message>
    <message>
        <source>1 set done today</source>
        <translation>今日1セット完了</translation>
    </message>
    <message>
        <source>%1 sets done today</source>
        <translation>今日%1セット完了</translation>
    </message>
    <message>
        <source>1 repetition</source>
        <translation>1回</translation>
    </message>
    <message>
        <source>%1 repetitions</source>
        <translation>%1回</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1、%2</translation>
    </message>
    <message>
        <source>nothing measured</source>
        <translation>測定なし</translation>
    </message>
    <message>
        <source>right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>two peaks</source>
        <translation>山が二つ</translation>
    </message>
    <message>
        <source>short of its range</source>
        <translation>可動域不足</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>取り消し済み</translation>
    </message>
    <message>
        <source>no evidence</source>
        <translation>根拠外</translation>
    </message>
    <message>
        <source>Repetition %1</source>
        <translation>反復 %1</translation>
    </message>
    <message>
        <source>Measured. What you say here is kept beside the recording.</source>
        <translation>測定済み。ここで伝えたことは記録の横に残ります。</translation>
    </message>
    <message>
        <source>Typed in.</source>
        <translation>入力。</translation>
    </message>
    <message>
        <source>Drop time</source>
        <translation>下降時間</translation>
    </message>
    <message>
        <source>Time to peak velocity</source>
        <translation>最大速度到達時間</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::FindSensorsViewModel</name>
    <message>
        <source>%1 of %2 shown: the others have another name.</source>
        <translation>%2個中%1個を表示：他は名前が違います。</translation>
    </message>
    <message>
        <source>Searching</source>
        <translation>探しています</translation>
    </message>
    <message>
        <source>%1 found, still searching</source>
        <translation>%1個見つかり、探索中</translation>
    </message>
    <message>
        <source>%1 found</source>
        <translation>%1個見つかりました</translation>
    </message>
    <message>
        <source>Fits what it sends</source>
        <translation>送信内容に合う</translation>
    </message>
    <message>
        <source>May fit</source>
        <translation>合うかもしれない</translation>
    </message>
    <message>
        <source>Does not fit what it offers</source>
        <translation>提供内容に合わない</translation>
    </message>
    <message>
        <source>Connecting. Keep it near, lying still.</source>
        <translation>接続中。近くで静かに置いてください。</translation>
    </message>
    <message>
        <source>It sends. Finding how to read it.</source>
        <translation>受信しました。読み方を探しています。</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>読み方：%1</translation>
    </message>
    <message>
        <source>It sends nothing by itself. Choose how it is read, if you know it; shake it awake and try again, if not.</source>
        <translation>自分からは送りません。分かれば読み方を選び、分からなければ振ってもう一度試してください。</translation>
    </message>
    <message>
        <source>It sends, but nothing here can read it yet. Teach it: three minutes, no tools.</source>
        <translation>送っていますが、まだ読めません。教えてください：3分、道具は不要です。</translation>
    </message>
    <message>
        <source>Give it a name, such as &quot;Bar sensor&quot;.</source>
        <translation>「バーセンサー」などの名前を付けます。</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1文字で十分です。</translation>
    </message>
    <message>
        <source>Another sensor has that name.</source>
        <translation>その名前のセンサーがあります。</translation>
    </message>
    <message>
        <source>Choose first how it is read.</source>
        <translation>先に読み方を選んでください。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::Help</name>
    <message>
        <source>What is this: %1?</source>
        <translation>これは何？：%1</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::ImportViewModel</name>
    <message>
        <source>Not in the squad: left out. Tap to choose.</source>
        <translation>チームにいないため除外。タップして選ぶ。</translation>
    </message>
    <message>
        <source>Will be added to the squad</source>
        <translation>チームに追加します</translation>
    </message>
    <message>
        <source>Rows without a name</source>
        <translation>名前のない行</translation>
    </message>
    <message>
        <source>Not known: left out. Tap to choose.</source>
        <translation>不明なため除外。タップして選ぶ。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>%1行目</translation>
    </message>
    <message>
        <source>Line %1, %2</source>
        <translation>%1行目、%2</translation>
    </message>
    <message>
        <source>And %1 more</source>
        <translation>ほか%1</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>小数点</translation>
    </message>
    <message>
        <source>Point, 1.85</source>
        <translation>点、1.85</translation>
    </message>
    <message>
        <source>Comma, 1,85</source>
        <translation>コンマ、1,85</translation>
    </message>
    <message>
        <source>Days are written</source>
        <translation>日付の書き方</translation>
    </message>
    <message>
        <source>Day, month</source>
        <translation>日、月</translation>
    </message>
    <message>
        <source>Month, day</source>
        <translation>月、日</translation>
    </message>
    <message>
        <source>Loads are in</source>
        <translation>負荷の単位</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>One row is</source>
        <translation>1行は</translation>
    </message>
    <message>
        <source>A run</source>
        <translation>1本の走り</translation>
    </message>
    <message>
        <source>A split</source>
        <translation>1区間</translation>
    </message>
    <message>
        <source>Times count</source>
        <translation>タイムは</translation>
    </message>
    <message>
        <source>From the start</source>
        <translation>スタートから</translation>
    </message>
    <message>
        <source>From the gate before</source>
        <translation>前の計測点から</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>スタート</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>ブロック</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>スタンディング</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>倒れ込み</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>ローリング</translation>
    </message>
    <message>
        <source>Flying</source>
        <translation>加速走</translation>
    </message>
    <message>
        <source>Timed by</source>
        <translation>計時</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>手動</translation>
    </message>
    <message>
        <source>Gates</source>
        <translation>光電管</translation>
    </message>
    <message>
        <source>Video</source>
        <translation>動画</translation>
    </message>
    <message>
        <source>Electronic</source>
        <translation>電気計時</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>除外</translation>
    </message>
    <message>
        <source>Add to the squad</source>
        <translation>チームに追加</translation>
    </message>
    <message>
        <source>Who is this?</source>
        <translation>これは誰？</translation>
    </message>
    <message>
        <source>Which lift is this?</source>
        <translation>これはどの種目？</translation>
    </message>
    <message>
        <source>Stopped. Nothing was added.</source>
        <translation>停止しました。何も追加していません。</translation>
    </message>
    <message>
        <source>Read as the last file of this kind was.</source>
        <translation>前回の同種ファイルと同じ読み方です。</translation>
    </message>
    <message>
        <source>1 is there already</source>
        <translation>1件は登録済み</translation>
    </message>
    <message>
        <source>%1 are there already</source>
        <translation>%1件は登録済み</translation>
    </message>
    <message>
        <source>1 is left out</source>
        <translation>1件を除外</translation>
    </message>
    <message>
        <source>%1 are left out</source>
        <translation>%1件を除外</translation>
    </message>
    <message>
        <source>1 bad row</source>
        <translation>不正な行1</translation>
    </message>
    <message>
        <source>%1 bad rows</source>
        <translation>不正な行%1</translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>数えています</translation>
    </message>
    <message>
        <source>Answer the question first</source>
        <translation>先に質問に答えてください</translation>
    </message>
    <message>
        <source>Nothing to add</source>
        <translation>追加するものがありません</translation>
    </message>
    <message>
        <source>Add 1 set</source>
        <translation>1セットを追加</translation>
    </message>
    <message>
        <source>Add %1 sets</source>
        <translation>%1セットを追加</translation>
    </message>
    <message>
        <source>Add 1 run</source>
        <translation>1本を追加</translation>
    </message>
    <message>
        <source>Add %1 runs</source>
        <translation>%1本を追加</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>読み込み中</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2 の %1</translation>
    </message>
    <message>
        <source>There is no such day. Type it like %1.</source>
        <translation>その日付はありません。%1 のように入力してください。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::JumpEntry</name>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>接地 %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>滞空 %1</translation>
    </message>
    <message>
        <source>Type the flight time, or the height.</source>
        <translation>滞空時間か高さを入力してください。</translation>
    </message>
    <message>
        <source>That day has not come yet.</source>
        <translation>その日はまだ来ていません。</translation>
    </message>
    <message>
        <source>Save these first.</source>
        <translation>先にこれらを保存してください。</translation>
    </message>
    <message>
        <source>Best %1, mean %2</source>
        <translation>最高 %1、平均 %2</translation>
    </message>
    <message>
        <source>At most %1 contacts in a session and %2 in seven days. Under 18: at most %3, from at most %4. Heavier than %5: no box above %6.</source>
        <translation>接地は1回の練習で最大 %1、7日で %2。18歳未満：最大 %3、高さ %4 まで。%5 を超える人：%6 を超える台は使わない。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LadderViewModel</name>
    <message>
        <source>planned for %1</source>
        <translation>予定 %1</translation>
    </message>
    <message>
        <source>since %1, you stand here</source>
        <translation>%1 からここにいます</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1～%2</translation>
    </message>
    <message>
        <source>%1 ladder</source>
        <translation>%1ラダー</translation>
    </message>
    <message>
        <source>week %1 of %2</source>
        <translation>%2週中%1週目</translation>
    </message>
    <message>
        <source>the main competition is over</source>
        <translation>主要競技会は終わりました</translation>
    </message>
    <message>
        <source>the main competition is today</source>
        <translation>主要競技会は今日です</translation>
    </message>
    <message>
        <source>1 day to the main competition</source>
        <translation>主要競技会まで1日</translation>
    </message>
    <message>
        <source>%1 days to the main competition</source>
        <translation>主要競技会まで%1日</translation>
    </message>
    <message>
        <source>%1 weeks to the main competition</source>
        <translation>主要競技会まで%1週間</translation>
    </message>
    <message>
        <source>Step to %1 today</source>
        <translation>今日 %1 へ進む</translation>
    </message>
    <message>
        <source>Hold at %1 today</source>
        <translation>今日 %1 を維持</translation>
    </message>
    <message>
        <source>Step back to %1 today</source>
        <translation>今日 %1 へ戻る</translation>
    </message>
    <message>
        <source>Ease %1 today</source>
        <translation>今日 %1 を軽くする</translation>
    </message>
    <message>
        <source>Rest from %1 today</source>
        <translation>今日 %1 を休む</translation>
    </message>
    <message>
        <source>Next step: week %1, at the latest week %2</source>
        <translation>次の段：%1週目、遅くとも%2週目</translation>
    </message>
    <message>
        <source>Next step: week %1</source>
        <translation>次の段：%1週目</translation>
    </message>
    <message>
        <source>Choose what you will do.</source>
        <translation>どうするか選んでください。</translation>
    </message>
    <message>
        <source>Say why, in a few words.</source>
        <translation>理由を短く書いてください。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LiftTrendViewModel</name>
    <message>
        <source>Both sides</source>
        <translation>両側</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1: %2 on %3, the first on this rung here.</source>
        <translation>%1：%3 に %2、この段での最初。</translation>
    </message>
    <message>
        <source>%1: %2 on %3, from %4 on %5.</source>
        <translation>%1：%3 に %2、%5 の %4 から。</translation>
    </message>
    <message>
        <source>Nothing measured on this ladder since %1.</source>
        <translation>%1 以降このラダーの測定はありません。</translation>
    </message>
    <message>
        <source>Nothing measured of this side.</source>
        <translation>この側の測定はありません。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::LoadVelocityViewModel</name>
    <message>
        <source>%1: load and velocity</source>
        <translation>%1：負荷と速度</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>左</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>右</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>両側</translation>
    </message>
    <message>
        <source>Estimated 1RM %1</source>
        <translation>推定 1RM %1</translation>
    </message>
    <message>
        <source>Estimated 1RM %1 (95 %: %2 to %3)</source>
        <translation>推定 1RM %1（95 %：%2～%3）</translation>
    </message>
    <message>
        <source>From 1 session</source>
        <translation>1回の練習から</translation>
    </message>
    <message>
        <source>From %1 sessions</source>
        <translation>%1回の練習から</translation>
    </message>
    <message>
        <source>%1 of this season on this rung, the fastest repetition at each load: %2 points.</source>
        <translation>今シーズンこの段の%1、各負荷で最速の反復：%2点。</translation>
    </message>
    <message>
        <source>%1 No velocity at 1RM is published for this lift, so the line points to no 1RM.</source>
        <translation>%1 この種目の 1RM 時の速度は公表されておらず、線から 1RM は出せません。</translation>
    </message>
    <message>
        <source>%1 1RM is where the line meets %2 (%3). An estimate is an estimate.</source>
        <translation>%1 1RM は線が %2（%3）に届く所です。推定は推定です。</translation>
    </message>
    <message>
        <source>No line yet: %1.</source>
        <translation>まだ線がありません：%1。</translation>
    </message>
    <message>
        <source>Nothing measured on this rung yet. With a sensor at the warm-up loads: %1.</source>
        <translation>この段ではまだ測定がありません。センサーを付けてウォームアップの負荷で：%1。</translation>
    </message>
    <message>
        <source>%1, %2, %3.</source>
        <translation>%1、%2、%3。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::OwnLadderViewModel</name>
    <message>
        <source>A ladder needs a rung.</source>
        <translation>ラダーには段が必要です。</translation>
    </message>
    <message>
        <source>Training has been done on this rung. It stays.</source>
        <translation>この段では練習済みです。外せません。</translation>
    </message>
    <message>
        <source>Give the ladder a name.</source>
        <translation>ラダーに名前を付けてください。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::PlateEntry</name>
    <message>
        <source>The bar alone, %1.</source>
        <translation>バーのみ、%1。</translation>
    </message>
    <message>
        <source>Each side %1. Bar %2.</source>
        <translation>片側 %1。バー %2。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::Preferences</name>
    <message>
        <source>As the device</source>
        <translation>端末に合わせる</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::RunFitViewModel</name>
    <message>
        <source>competition</source>
        <translation>競技会</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>テスト日</translation>
    </message>
    <message>
        <source>wind %1 m/s</source>
        <translation>風 %1 m/s</translation>
    </message>
    <message>
        <source>run-in %1</source>
        <translation>助走 %1</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 m above the sea</source>
        <translation>海抜 %1 m</translation>
    </message>
    <message>
        <source>Ground contact near top speed %1, ± 4 ms from video</source>
        <translation>最高速度付近の接地 %1、動画から ± 4 ms</translation>
    </message>
    <message>
        <source>Step length near top speed %1</source>
        <translation>最高速度付近のストライド %1</translation>
    </message>
    <message>
        <source>Without splits a run has one time and no curve. Three to five splits, the first within 10 m and the last at 30 m or further, give top speed and acceleration.</source>
        <translation>通過タイムがない走りは一つのタイムだけで、曲線はありません。3～5つ、最初は10 m以内、最後は30 m以上で、最高速度と加速が分かります。</translation>
    </message>
    <message>
        <source>No answer was found. %1</source>
        <translation>解が見つかりません。%1</translation>
    </message>
    <message>
        <source>No fit. %1</source>
        <translation>曲線なし。%1</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>error not known</source>
        <translation>誤差不明</translation>
    </message>
    <message>
        <source>Top speed</source>
        <translation>最高速度</translation>
    </message>
    <message>
        <source>Time constant τ: the shorter, the quicker it is reached</source>
        <translation>時定数 τ：短いほど早く達する</translation>
    </message>
    <message>
        <source>Acceleration at the start</source>
        <translation>スタート時の加速度</translation>
    </message>
    <message>
        <source>%1 m/s²</source>
        <translation>%1 m/s²</translation>
    </message>
    <message>
        <source>First movement after the clock began (fitted)</source>
        <translation>時計開始から動き出しまで（推定）</translation>
    </message>
    <message>
        <source>Splits lie from the fit by</source>
        <translation>通過タイムと曲線のずれ</translation>
    </message>
    <message>
        <source>root mean square</source>
        <translation>二乗平均平方根</translation>
    </message>
    <message>
        <source>Flying speed</source>
        <translation>加速走の速度</translation>
    </message>
    <message>
        <source>Of the best so far</source>
        <translation>これまでの最高に対して</translation>
    </message>
    <message>
        <source>this is the best</source>
        <translation>これが最高です</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%2 に %1</translation>
    </message>
    <message>
        <source>Greatest force F0</source>
        <translation>最大の力 F0</translation>
    </message>
    <message>
        <source>%1 N/kg</source>
        <translation>%1 N/kg</translation>
    </message>
    <message>
        <source>%1 N</source>
        <translation>%1 N</translation>
    </message>
    <message>
        <source>Greatest power</source>
        <translation>最大パワー</translation>
    </message>
    <message>
        <source>%1 W/kg</source>
        <translation>%1 W/kg</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>Speed at which force ends, v0</source>
        <translation>力が尽きる速度 v0</translation>
    </message>
    <message>
        <source>Greatest share of force forwards</source>
        <translation>前向きの力の最大割合</translation>
    </message>
    <message>
        <source>from 0.3 s on</source>
        <translation>0.3 s から</translation>
    </message>
    <message>
        <source>Its loss with speed (DRF)</source>
        <translation>速度による低下（DRF）</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>for each m/s</source>
        <translation>1 m/s ごと</translation>
    </message>
    <message>
        <source>Force and power are not available: a flying start shows no acceleration.</source>
        <translation>力とパワーは出ません：加速走では加速が見えません。</translation>
    </message>
    <message>
        <source>Force and power are not available: %1.</source>
        <translation>力とパワーは出ません：%1。</translation>
    </message>
    <message>
        <source>20 °C</source>
        <translation>20 °C</translation>
    </message>
    <message>
        <source>the height of the sea</source>
        <translation>海面の高さ</translation>
    </message>
    <message>
        <source>still air</source>
        <translation>無風</translation>
    </message>
    <message>
        <source>For %1, from the fit and the drag of the air.</source>
        <translation>%1 の場合、曲線と空気抵抗から。</translation>
    </message>
    <message>
        <source> Not typed, and taken as: %1.</source>
        <translation> 未入力のため次とみなしました：%1。</translation>
    </message>
    <message>
        <source>The clock began with the gun, the reaction of %1 s is known.</source>
        <translation>時計は号砲で始まり、反応時間 %1 s は分かっています。</translation>
    </message>
    <message>
        <source>The clock is taken to begin with the first movement. If it began at a beam, type the way to it.</source>
        <translation>時計は動き出しで始まったとみなします。光電管で始まった場合は、そこまでの距離を入力してください。</translation>
    </message>
    <message>
        <source>The clock began at a beam %1 in front of the start.</source>
        <translation>時計はスタートの %1 先の光電管で始まりました。</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>When the clock began is not known against the first movement, so it was fitted too.</source>
        <translation>動き出しに対していつ時計が始まったか不明なため、それも推定しました。</translation>
    </message>
    <message>
        <source>The best top speed so far from this start.</source>
        <translation>このスタートでこれまでの最高速度です。</translation>
    </message>
    <message>
        <source>The first fit of this start: later ones are compared with it.</source>
        <translation>このスタートで最初の曲線です：次からこれと比べます。</translation>
    </message>
    <message>
        <source>Best top speed from this start: %1 on %2.</source>
        <translation>このスタートでの最高速度：%2 に %1。</translation>
    </message>
    <message>
        <source>the run before</source>
        <translation>前回の走り</translation>
    </message>
    <message>
        <source>the median of the last %1</source>
        <translation>直近%1本の中央値</translation>
    </message>
    <message>
        <source>%1 m/s against %2 (%3).</source>
        <translation>%2（%3）に対して %1 m/s。</translation>
    </message>
    <message>
        <source>That is more than timing explains (%1). Days differ too: what lasts counts.</source>
        <translation>計時だけでは説明できない差です（%1）。日による違いもあります：続くことが大切です。</translation>
    </message>
    <message>
        <source>Timing explains it (%1): no change is shown.</source>
        <translation>計時で説明できる差です（%1）：変化は示されません。</translation>
    </message>
    <message>
        <source>%1 to %2: %3 on average. At %4 s the split is %5 the curve.</source>
        <translation>%1～%2：平均 %3。%4 s の通過は曲線より%5。</translation>
    </message>
    <message>
        <source>%1 later than</source>
        <translation>%1 遅い</translation>
    </message>
    <message>
        <source>%1 sooner than</source>
        <translation>%1 早い</translation>
    </message>
    <message>
        <source>It is left out: %1.</source>
        <translation>除外：%1。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SeasonLiftsViewModel</name>
    <message>
        <source>%1 × %2 · %3</source>
        <translation>%1 × %2 · %3</translation>
    </message>
    <message>
        <source>%1 rungs, from %2 to %3</source>
        <translation>%1段、%2から%3まで</translation>
    </message>
    <message>
        <source>rung %1 of %2: %3</source>
        <translation>%2段中%1段目：%3</translation>
    </message>
    <message>
        <source>A session holds %1 of them; they take turns. A few that stay all season bring more than many.</source>
        <translation>1回の練習に入るのは%1つで、交代で行います。少数をシーズン通して続けるほうが効果的です。</translation>
    </message>
    <message>
        <source>A session holds %1 of them.</source>
        <translation>1回の練習に入るのは%1つです。</translation>
    </message>
    <message>
        <source>%1 is out of the season. Its sets stay in the log.</source>
        <translation>%1 をシーズンから外しました。セットの記録は残ります。</translation>
    </message>
    <message>
        <source>%1 is in the season from today on.</source>
        <translation>%1 が今日からシーズンに入りました。</translation>
    </message>
    <message>
        <source>The order of the ladders is changed.</source>
        <translation>ラダーの順番を変えました。</translation>
    </message>
    <message>
        <source>%1, own</source>
        <translation>%1（自作）</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1 を変更しました。</translation>
    </message>
    <message>
        <source>%1 is deleted. Its sets stay in the log.</source>
        <translation>%1 を削除しました。セットの記録は残ります。</translation>
    </message>
    <message>
        <source>Choose at least one day.</source>
        <translation>1日以上選んでください。</translation>
    </message>
    <message>
        <source>%1 is added.</source>
        <translation>%1 を追加しました。</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1 を計画から外しました。</translation>
    </message>
    <message>
        <source>Nothing the sensor knows</source>
        <translation>センサーの知らない動き</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SeasonViewModel</name>
    <message>
        <source>Travel</source>
        <translation>移動</translation>
    </message>
    <message>
        <source>Exams</source>
        <translation>試験</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>病気</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>けが</translation>
    </message>
    <message>
        <source>priority %1</source>
        <translation>優先度 %1</translation>
    </message>
    <message>
        <source>main</source>
        <translation>主要</translation>
    </message>
    <message>
        <source>today</source>
        <translation>今日</translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation>%1日後</translation>
    </message>
    <message>
        <source>in %1 weeks</source>
        <translation>%1週間後</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>%1 to %2 · %3</source>
        <translation>%1～%2 · %3</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1日</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1日</translation>
    </message>
    <message>
        <source>A: volume falls over the two weeks before it, intensity stays.</source>
        <translation>A：前の2週間は量を減らし、強度は保ちます。</translation>
    </message>
    <message>
        <source>B: a little less volume over the four days before it.</source>
        <translation>B：前の4日間は量を少し減らします。</translation>
    </message>
    <message>
        <source>C: trained through, with two lighter days before it.</source>
        <translation>C：練習を続け、前に軽い日を2日入れます。</translation>
    </message>
    <message>
        <source>Give it a name.</source>
        <translation>名前を付けてください。</translation>
    </message>
    <message>
        <source>Nothing else in the plan moves.</source>
        <translation>計画のほかの部分は変わりません。</translation>
    </message>
    <message>
        <source>%1 is added.</source>
        <translation>%1 を追加しました。</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1 を変更しました。</translation>
    </message>
    <message>
        <source>%1 is deleted.</source>
        <translation>%1 を削除しました。</translation>
    </message>
    <message>
        <source>No lifts on these days.</source>
        <translation>この間は種目なし。</translation>
    </message>
    <message>
        <source>Training goes on, with less of it.</source>
        <translation>練習は続け、量を減らします。</translation>
    </message>
    <message>
        <source>No lifts. Come back only when you are well; the plan steps back after a long break.</source>
        <translation>種目なし。治ってから戻ってください。長い休みの後は計画が段を戻します。</translation>
    </message>
    <message>
        <source>Lifts that load the injured place rest. See a clinician; this is not medical advice.</source>
        <translation>けがした所に負荷がかかる種目は休みます。医師に相談してください。これは医学的助言ではありません。</translation>
    </message>
    <message>
        <source>%1 is in the plan.</source>
        <translation>%1 を計画に入れました。</translation>
    </message>
    <message>
        <source>%1 is taken out of the plan.</source>
        <translation>%1 を計画から外しました。</translation>
    </message>
    <message>
        <source>Type the height of a box, in %1.</source>
        <translation>台の高さを %1 で入力してください。</translation>
    </message>
    <message>
        <source>This box is there already.</source>
        <translation>この台はもうあります。</translation>
    </message>
    <message>
        <source>The box of %1 is added.</source>
        <translation>%1 の台を追加しました。</translation>
    </message>
    <message>
        <source>The box of %1 is gone.</source>
        <translation>%1 の台を外しました。</translation>
    </message>
    <message>
        <source>The days with lifts are changed.</source>
        <translation>種目の日を変更しました。</translation>
    </message>
    <message>
        <source>The days with sprints are changed.</source>
        <translation>スプリントの日を変更しました。</translation>
    </message>
    <message>
        <source>What the weight room has is changed.</source>
        <translation>トレーニング室にあるものを変更しました。</translation>
    </message>
    <message>
        <source>The length of a session is changed.</source>
        <translation>練習時間を変更しました。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SensorDesk</name>
    <message>
        <source>The sensor is lost. It goes on when it is back.</source>
        <translation>センサーが切れました。戻れば続けます。</translation>
    </message>
    <message>
        <source>It is called %1.</source>
        <translation>名前は %1 です。</translation>
    </message>
    <message>
        <source>Read as: %1</source>
        <translation>読み方：%1</translation>
    </message>
    <message>
        <source>The six sides are saved.</source>
        <translation>6つの面を保存しました。</translation>
    </message>
    <message>
        <source>%1 is saved. It is found by itself from now on.</source>
        <translation>%1 を保存しました。これからは自動で見つかります。</translation>
    </message>
    <message>
        <source>%1 is kept.</source>
        <translation>%1 を残しました。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SensorsViewModel</name>
    <message>
        <source>Choose how it is read</source>
        <translation>読み方を選ぶ</translation>
    </message>
    <message>
        <source>Ask again</source>
        <translation>もう一度尋ねる</translation>
    </message>
    <message>
        <source>Try now</source>
        <translation>今試す</translation>
    </message>
    <message>
        <source>None yet. One is added in two minutes, and found by itself from then on.</source>
        <translation>まだありません。2分で追加でき、次からは自動で見つかります。</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1：%2</translation>
    </message>
    <message>
        <source>Measured. Do it again after a fall, or each season.</source>
        <translation>測定済み。落とした後か、シーズンごとに測り直します。</translation>
    </message>
    <message>
        <source>Not measured yet: two minutes, and speeds get truer.</source>
        <translation>未測定：2分で速度がより正確になります。</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>製造元</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>型番</translation>
    </message>
    <message>
        <source>Firmware</source>
        <translation>ファームウェア</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>ハードウェア</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>製造番号</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>アドレス</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>自分の</translation>
    </message>
    <message>
        <source>Comes with the program</source>
        <translation>プログラム付属</translation>
    </message>
    <message>
        <source>Give it a name, such as &quot;Bar sensor&quot;.</source>
        <translation>「バーセンサー」などの名前を付けます。</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1文字で十分です。</translation>
    </message>
    <message>
        <source>Another sensor has that name.</source>
        <translation>その名前のセンサーがあります。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SplitEntry</name>
    <message>
        <source>A distance from the start line, up to 400 m.</source>
        <translation>スタート線からの距離、400 m まで。</translation>
    </message>
    <message>
        <source>It must lie beyond the last split.</source>
        <translation>最後の通過点より先でなければなりません。</translation>
    </message>
    <message>
        <source>It lies beyond the run.</source>
        <translation>走りの終わりより先です。</translation>
    </message>
    <message>
        <source>Press the digits of the watch.</source>
        <translation>時計の数字を押してください。</translation>
    </message>
    <message>
        <source>It must be later than the last split.</source>
        <translation>最後の通過タイムより後でなければなりません。</translation>
    </message>
    <message>
        <source>That is faster than 15 m/s. Check distance and time.</source>
        <translation>15 m/s より速いです。距離とタイムを確かめてください。</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 を %2</translation>
    </message>
    <message>
        <source>Counted from the start line, as the watch shows them.</source>
        <translation>時計の表示どおり、スタート線から数えます。</translation>
    </message>
    <message>
        <source>None: with five, top speed and acceleration can be seen</source>
        <translation>なし：5つあれば最高速度と加速が見えます</translation>
    </message>
    <message>
        <source>%1 splits, the last %2</source>
        <translation>通過 %1、最後は %2</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SprintTrendViewModel</name>
    <message>
        <source>Without hand timing</source>
        <translation>手動計時を除く</translation>
    </message>
    <message>
        <source>Wind ±2 m/s</source>
        <translation>風 ±2 m/s</translation>
    </message>
    <message>
        <source>%1 (wind %2 m/s)</source>
        <translation>%1（風 %2 m/s）</translation>
    </message>
    <message>
        <source>Best %1 on %2, latest %3 on %4.</source>
        <translation>最高 %1（%2）、最新 %3（%4）。</translation>
    </message>
    <message>
        <source>%1 of %2 runs are shown.</source>
        <translation>%2本中%1本を表示。</translation>
    </message>
    <message>
        <source>%1 Outdoors a run without a wind reading is left out.</source>
        <translation>%1 屋外で風の記録がない走りは除きます。</translation>
    </message>
    <message>
        <source>No run of this test since %1.</source>
        <translation>%1 以降このテストの走りはありません。</translation>
    </message>
    <message>
        <source>The filters leave out every run of this test.</source>
        <translation>絞り込みでこのテストの走りがすべて除かれました。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SquadDayViewModel</name>
    <message>
        <source>All</source>
        <translation>すべて</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>%1組目</translation>
    </message>
    <message>
        <source>No rack: %1</source>
        <translation>ラックなし：%1</translation>
    </message>
    <message>
        <source>Rack %1: %2</source>
        <translation>ラック%1：%2</translation>
    </message>
    <message>
        <source>no lifts today</source>
        <translation>今日は種目なし</translation>
    </message>
    <message>
        <source>1 athlete lifts today</source>
        <translation>今日は1人が実施</translation>
    </message>
    <message>
        <source>%1 athletes lift today</source>
        <translation>今日は%1人が実施</translation>
    </message>
    <message>
        <source>Nobody has lifts today. Each athlete&apos;s next session stands on Ladder.</source>
        <translation>今日は誰も種目がありません。各選手の次の練習は「ラダー」にあります。</translation>
    </message>
    <message>
        <source>The plans are being read.</source>
        <translation>計画を読み込み中です。</translation>
    </message>
    <message>
        <source>1 rack</source>
        <translation>ラック1台</translation>
    </message>
    <message>
        <source>%1 racks</source>
        <translation>ラック%1台</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::SquadViewModel</name>
    <message>
        <source>%1 years</source>
        <translation>%1歳</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>グループ %1</translation>
    </message>
    <message>
        <source>1 athlete</source>
        <translation>選手1人</translation>
    </message>
    <message>
        <source>%1 athletes</source>
        <translation>選手%1人</translation>
    </message>
    <message>
        <source>Check the year.</source>
        <translation>年を確かめてください。</translation>
    </message>
    <message>
        <source>Under 18, a guardian&apos;s consent is needed first.</source>
        <translation>18歳未満は先に保護者の同意が必要です。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::StepViewModel</name>
    <message>
        <source>Step</source>
        <translation>進む</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>維持</translation>
    </message>
    <message>
        <source>Step back</source>
        <translation>戻る</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>軽くする</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>休む</translation>
    </message>
    <message>
        <source>You follow this.</source>
        <translation>これに従います。</translation>
    </message>
    <message>
        <source>You decided otherwise: %1. %2</source>
        <translation>別の判断をしました：%1。%2</translation>
    </message>
    <message>
        <source> ± %1</source>
        <translation> ± %1</translation>
    </message>
    <message>
        <source>planned for %1, week %2</source>
        <translation>予定 %1、%2週目</translation>
    </message>
    <message>
        <source>since %1, week %2</source>
        <translation>%1 から、%2週目</translation>
    </message>
    <message>
        <source>%1 to %2, from week %3</source>
        <translation>%1～%2、%3週目から</translation>
    </message>
    <message>
        <source>Phase: %1</source>
        <translation>期：%1</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1日</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1日</translation>
    </message>
    <message>
        <source>First planned for %1: %2 later</source>
        <translation>当初の予定 %1：%2 遅い</translation>
    </message>
    <message>
        <source>First planned for %1: %2 sooner</source>
        <translation>当初の予定 %1：%2 早い</translation>
    </message>
    <message>
        <source>Earliest: %1</source>
        <translation>最も早くて：%1</translation>
    </message>
    <message>
        <source>At the latest: %1</source>
        <translation>遅くとも：%1</translation>
    </message>
    <message>
        <source>1 session of evidence</source>
        <translation>根拠1回分</translation>
    </message>
    <message>
        <source>%1 sessions of evidence</source>
        <translation>根拠%1回分</translation>
    </message>
    <message>
        <source>Probe load %1</source>
        <translation>確認の負荷 %1</translation>
    </message>
    <message>
        <source>Probe load %1, later %2</source>
        <translation>確認の負荷 %1、後に %2</translation>
    </message>
    <message>
        <source>The ladder began here</source>
        <translation>ここからラダーが始まりました</translation>
    </message>
    <message>
        <source>The plan&apos;s first rung on this ladder: no evidence is needed to begin.</source>
        <translation>このラダーの計画で最初の段：始めるのに根拠は要りません。</translation>
    </message>
    <message>
        <source>The rungs before it come first; what it needs is known once you stand on the one before.</source>
        <translation>前の段が先です。必要なものは、一つ前の段に立つと分かります。</translation>
    </message>
    <message>
        <source>Nothing is measured on the rung before it yet. Each session&apos;s probe set counts.</source>
        <translation>前の段ではまだ測定がありません。毎回の確認セットが数えられます。</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1（%2）</translation>
    </message>
    <message>
        <source>No number is missing.</source>
        <translation>足りない数値はありません。</translation>
    </message>
    <message>
        <source>Still missing: %1</source>
        <translation>まだ足りない：%1</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TeachViewModel</name>
    <message>
        <source>Acceleration</source>
        <translation>加速度</translation>
    </message>
    <message>
        <source>Turning</source>
        <translation>回転</translation>
    </message>
    <message>
        <source>Counting of samples</source>
        <translation>サンプルの番号</translation>
    </message>
    <message>
        <source>Its own time</source>
        <translation>センサー自身の時刻</translation>
    </message>
    <message>
        <source>Samples in a second</source>
        <translation>毎秒のサンプル数</translation>
    </message>
    <message>
        <source>Form of its messages</source>
        <translation>通信の形</translation>
    </message>
    <message>
        <source>sure</source>
        <translation>確か</translation>
    </message>
    <message>
        <source>fairly sure</source>
        <translation>ほぼ確か</translation>
    </message>
    <message>
        <source>not sure</source>
        <translation>不確か</translation>
    </message>
    <message>
        <source>Nothing came from the sensor. Shake it awake, then do this step again.</source>
        <translation>センサーから何も来ませんでした。振って起こし、この手順をもう一度。</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>%1 から %2。</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Give it a name, to know it by later.</source>
        <translation>後で分かるように名前を付けてください。</translation>
    </message>
    <message>
        <source>%1 letters are enough.</source>
        <translation>%1文字で十分です。</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>手順 %1 / %2</translation>
    </message>
    <message>
        <source>Lay it flat, main side up.</source>
        <translation>主面を上にして平らに置く。</translation>
    </message>
    <message>
        <source>Turn it over, main side down.</source>
        <translation>裏返して主面を下にする。</translation>
    </message>
    <message>
        <source>Stand it on a long edge.</source>
        <translation>長い縁で立てる。</translation>
    </message>
    <message>
        <source>Stand it on the other long edge.</source>
        <translation>もう一方の長い縁で立てる。</translation>
    </message>
    <message>
        <source>Stand it on a short end.</source>
        <translation>短い端で立てる。</translation>
    </message>
    <message>
        <source>Stand it on the other short end.</source>
        <translation>もう一方の短い端で立てる。</translation>
    </message>
    <message>
        <source>Main side up: turn it once to the left.</source>
        <translation>主面を上：左へ1回転させる。</translation>
    </message>
    <message>
        <source>On a long edge: turn it once to the left.</source>
        <translation>長い縁で：左へ1回転させる。</translation>
    </message>
    <message>
        <source>On a short end: turn it once to the left.</source>
        <translation>短い端で：左へ1回転させる。</translation>
    </message>
    <message>
        <source>Raise it straight up by %1, and hold it there.</source>
        <translation>まっすぐ %1 上げて、そこで止める。</translation>
    </message>
    <message>
        <source>Back down, then raise it by %1 once more.</source>
        <translation>下ろして、もう一度 %1 上げる。</translation>
    </message>
    <message>
        <source>The main side has the button or the lamp. It has neither? Pick a side and stay with it.</source>
        <translation>主面はボタンかランプのある面です。どちらもなければ一つの面を決め、変えないでください。</translation>
    </message>
    <message>
        <source>Lean it on something if it will not stand. Then hands off.</source>
        <translation>立たなければ何かにもたせかけます。その後は手を触れずに。</translation>
    </message>
    <message>
        <source>From the floor to the top of a box or bench. Start and end still.</source>
        <translation>床から台やベンチの上まで。静止で始め、静止で終わります。</translation>
    </message>
    <message>
        <source>All the way round on the table, as the arrow shows. Start and end still.</source>
        <translation>矢印のように机の上で一周。静止で始め、静止で終わります。</translation>
    </message>
    <message>
        <source>How high will you raise it? (%1)</source>
        <translation>どれだけ上げますか？（%1）</translation>
    </message>
    <message>
        <source>Keep it still</source>
        <translation>動かさない</translation>
    </message>
    <message>
        <source>Hold it still</source>
        <translation>止めておく</translation>
    </message>
    <message>
        <source>Hold it still again</source>
        <translation>もう一度止めておく</translation>
    </message>
    <message>
        <source>Now raise it</source>
        <translation>今、上げる</translation>
    </message>
    <message>
        <source>Now turn it once</source>
        <translation>今、1回転</translation>
    </message>
    <message>
        <source>It cannot be read yet</source>
        <translation>まだ読めません</translation>
    </message>
    <message>
        <source>Learned</source>
        <translation>学習しました</translation>
    </message>
    <message>
        <source>Learned, but check it</source>
        <translation>学習しましたが、確認を</translation>
    </message>
    <message>
        <source>%1 % sure of the whole. Lift once and look whether the height is right.</source>
        <translation>全体で %1 % 確か。一度挙げて、高さが合うか見てください。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackViewModel</name>
    <message>
        <source>All</source>
        <translation>すべて</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>台 %1</translation>
    </message>
    <message>
        <source>test day</source>
        <translation>テスト日</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>number and kind of jumps</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>contact %1</source>
        <translation>接地 %1</translation>
    </message>
    <message>
        <source>flight %1</source>
        <translation>滞空 %1</translation>
    </message>
    <message>
        <source>height %1</source>
        <translation>高さ %1</translation>
    </message>
    <message>
        <source>jumps: %1</source>
        <translation>ジャンプ：%1</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>前回 %1</translation>
    </message>
    <message>
        <source>Box %1</source>
        <translation>台 %1</translation>
    </message>
    <message>
        <source>RSI %1</source>
        <translation>RSI %1</translation>
    </message>
    <message>
        <source>Nobody to time yet</source>
        <translation>計る選手がいません</translation>
    </message>
    <message>
        <source>No jumps yet</source>
        <translation>ジャンプがまだありません</translation>
    </message>
    <message>
        <source>No runs yet</source>
        <translation>走りがまだありません</translation>
    </message>
    <message>
        <source>Add an athlete on Squad. Runs and jumps are kept for each athlete apart.</source>
        <translation>「チーム」で選手を追加してください。走りとジャンプは選手ごとに残ります。</translation>
    </message>
    <message>
        <source>Type in drop jumps with contact and flight time, or a standing long jump. On the same day, under the same conditions, they tell whether strength arrives in time.</source>
        <translation>接地と滞空を付けたドロップジャンプ、または立幅跳を入力します。同じ日に同じ条件で行えば、力が間に合っているかが分かります。</translation>
    </message>
    <message>
        <source>The stopwatch says whether the plan works. Repeat the same test every three to four weeks: same zone, same run-in, same shoes, and write the wind beside it.</source>
        <translation>計画が効いているかはストップウォッチが教えます。3～4週ごとに同じテストを：同じ区間、同じ助走、同じシューズで、風も書きます。</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrackWorkViewModel</name>
    <message>
        <source>best %1</source>
        <translation>最高 %1</translation>
    </message>
    <message>
        <source>effort %1 of 10</source>
        <translation>きつさ 10中%1</translation>
    </message>
    <message>
        <source>sled %1</source>
        <translation>そり %1</translation>
    </message>
    <message>
        <source>slope %1 %</source>
        <translation>傾斜 %1 %</translation>
    </message>
    <message>
        <source>rest %1 min</source>
        <translation>休憩 %1分</translation>
    </message>
    <message>
        <source>wind %1</source>
        <translation>風 %1</translation>
    </message>
    <message>
        <source>fast: about %1 m</source>
        <translation>高速：約 %1 m</translation>
    </message>
    <message>
        <source>fast: %1 m</source>
        <translation>高速：%1 m</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <comment>runs and metres of one</comment>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>fast: about %1 m, of them %2 m at 95 %</source>
        <translation>高速：約 %1 m、うち 95 % が %2 m</translation>
    </message>
    <message>
        <source>fast: %1 m, of them %2 m at 95 %</source>
        <translation>高速：%1 m、うち 95 % が %2 m</translation>
    </message>
    <message>
        <source>resisted %1 m</source>
        <translation>牽引 %1 m</translation>
    </message>
    <message>
        <source>hill %1 m</source>
        <translation>坂 %1 m</translation>
    </message>
    <message>
        <source>contacts of jumps: %1</source>
        <translation>ジャンプの接地：%1</translation>
    </message>
    <message>
        <source>%1 more fast metres than the mean of the four weeks before</source>
        <translation>高速の距離が前4週の平均より %1 多い</translation>
    </message>
    <message>
        <source>%1 more metres than the mean of the four weeks before</source>
        <translation>距離が前4週の平均より %1 多い</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>今週</translation>
    </message>
    <message>
        <source>Week of %1</source>
        <translation>%1 の週</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
</context>
<context>
    <name>fleetrung::views::TrendsViewModel</name>
    <message>
        <source>This season</source>
        <translation>今シーズン</translation>
    </message>
    <message>
        <source>Last %1 weeks</source>
        <translation>直近%1週</translation>
    </message>
    <message>
        <source>All seasons</source>
        <translation>全シーズン</translation>
    </message>
    <message>
        <source>Weeks are counted from %1.</source>
        <translation>週は %1 から数えます。</translation>
    </message>
</context>
</TS>
